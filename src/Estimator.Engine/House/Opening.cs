using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>A door, window or other break in a wall.</summary>
public sealed record Opening
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>What it is.</summary>
    public required OpeningKind Kind { get; init; }

    /// <summary>A room on one side.</summary>
    public required string Room { get; init; }

    /// <summary>The room on the other side; null for outside or another dwelling.</summary>
    public string? OtherRoom { get; init; }

    /// <summary>Middle of the opening on the grid; null where <see cref="Wall"/> is given.</summary>
    public GridPoint? At { get; init; }

    /// <summary>Where its middle stands on a wall of <see cref="Room"/>; null where <see cref="At"/> is given.</summary>
    public WallSpot? Wall { get; init; }

    /// <summary>Clear width.</summary>
    public required Length Width { get; init; }

    /// <summary>Underside above the floor; zero for doors.</summary>
    public Length? Sill { get; init; }

    /// <summary>Top above the floor; null follows the practice table.</summary>
    public Length? Head { get; init; }
}
