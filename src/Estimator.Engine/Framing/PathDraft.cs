using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;

namespace Estimator.Engine.Framing;

/// <summary>A way that was found, before its lengths are explained.</summary>
internal sealed record PathDraft
{
    internal required RunWay Way { get; init; }

    internal required Placement From { get; init; }

    internal required Placement To { get; init; }

    internal required ImmutableArray<Waypoint> Turns { get; init; }

    internal required WayLength Length { get; init; }

    internal required ImmutableArray<PathLeg> Legs { get; init; }

    /// <summary>Spacing of the members that are bored.</summary>
    internal required Fact Spacing { get; init; }

    /// <summary>The part of the horizontal length that crosses those members.</summary>
    internal required int Spaced { get; init; }

    /// <summary>Holes besides: plates and corner studs.</summary>
    internal required int MoreBores { get; init; }

    internal bool Bridged { get; init; }
}
