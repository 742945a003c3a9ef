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

    /// <summary>For a way along walls where each turn lies; else empty.</summary>
    internal ImmutableArray<WallTurn> OnWalls { get; init; } = [];

    /// <summary>Plates that are bored.</summary>
    internal int Plates { get; init; }

    /// <summary>Corners of walls that are passed.</summary>
    internal int Corners { get; init; }

    internal bool Bridged { get; init; }
}
