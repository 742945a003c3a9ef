using System.Collections.Immutable;
using Estimator.Engine.House;

namespace Estimator.Engine.Framing;

/// <summary>A way that was found, before its lengths are explained.</summary>
internal sealed record PathDraft
{
    internal required RunWay Way { get; init; }

    internal required Placement From { get; init; }

    internal required Placement To { get; init; }

    internal required ImmutableArray<Waypoint> Turns { get; init; }

    /// <summary>Holes besides: plates and corner studs.</summary>
    internal required int MoreBores { get; init; }

    internal bool Bridged { get; init; }
}
