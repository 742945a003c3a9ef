using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Framing;

/// <summary>Where something is mounted.</summary>
public sealed record Placement
{
    /// <summary>Index of the room.</summary>
    public required int Room { get; init; }

    /// <summary>Index of the level.</summary>
    public required int Level { get; init; }

    /// <summary>On a wall or on the ceiling.</summary>
    public required Mount Mount { get; init; }

    /// <summary>Side of the room's outline for a wall mount; -1 on the ceiling.</summary>
    public required int Side { get; init; }

    /// <summary>Along that side from its first corner, in sixteenths; 0 on the ceiling.</summary>
    public required int Offset { get; init; }

    /// <summary>The point in canonical pose.</summary>
    public required PlanPoint Spot { get; init; }

    /// <summary>Box centre above the floor, in sixteenths; the ceiling height for a ceiling mount.</summary>
    public required int Height { get; init; }

    /// <summary>The point's x on the user's grid.</summary>
    public required Fact X { get; init; }

    /// <summary>The point's y on the user's grid.</summary>
    public required Fact Y { get; init; }

    /// <summary>Box centre above the floor.</summary>
    public required Fact HeightFact { get; init; }

    /// <summary>Whether the program found the place because the user gave only a number.</summary>
    public required bool Assumed { get; init; }
}
