using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Framing;

/// <summary>A room in canonical pose.</summary>
public sealed record FramedRoom
{
    /// <summary>Place in canonical order.</summary>
    public required int Index { get; init; }

    /// <summary>What the user stated.</summary>
    public required Room Source { get; init; }

    /// <summary>Index of its level.</summary>
    public required int Level { get; init; }

    /// <summary>Corners, counter-clockwise in the canonical pose, first not repeated. Side i runs from corner i to corner i + 1.</summary>
    public required ImmutableArray<PlanPoint> Corners { get; init; }

    /// <summary>Holes, each clockwise.</summary>
    public required ImmutableArray<ImmutableArray<PlanPoint>> Holes { get; init; }

    /// <summary>The user's coordinates of each corner, as stated on the grid, in the order of <see cref="Corners"/>.</summary>
    public required ImmutableArray<(Fact X, Fact Y)> CornerFacts { get; init; }

    /// <summary>The user's coordinates of the corners of each hole, in his order.</summary>
    public required ImmutableArray<ImmutableArray<(Fact X, Fact Y)>> HoleFacts { get; init; }

    /// <summary>Floor area less holes.</summary>
    public required Fact AreaSquareFeet { get; init; }

    /// <summary>Floor to ceiling.</summary>
    public required Fact CeilingHeight { get; init; }

    /// <summary>Floor to ceiling, in sixteenths.</summary>
    public required int Ceiling { get; init; }

    /// <summary>Whether the program arranged the room because the user gave only sizes.</summary>
    public required bool Arranged { get; init; }
}
