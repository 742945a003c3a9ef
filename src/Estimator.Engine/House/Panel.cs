using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>A panel.</summary>
public sealed record Panel
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>What people call it.</summary>
    public string Name { get; init; } = "";

    /// <summary>The room it hangs in.</summary>
    public required string Room { get; init; }

    /// <summary>A point of the grid, moved to the nearest wall of the room; null where <see cref="Wall"/> is given.</summary>
    public GridPoint? At { get; init; }

    /// <summary>A spot on a wall of the room.</summary>
    public WallSpot? Wall { get; init; }

    /// <summary>Whose listed breakers it takes; free text, null when unknown.</summary>
    public string? Make { get; init; }

    /// <summary>Breaker series of that make; null when unknown.</summary>
    public string? Series { get; init; }

    /// <summary>Rating of the bus and its main or feeder breaker, in amperes.</summary>
    public required Current RatingA { get; init; }

    /// <summary>Breaker spaces.</summary>
    public required int Spaces { get; init; }

    /// <summary>How many of the spaces take a tandem breaker.</summary>
    public int TandemSpaces { get; init; }

    /// <summary>The panel that feeds this one; null for the service panel.</summary>
    public string? FedFrom { get; init; }

    /// <summary>Whether it hangs there already.</summary>
    public bool Existing { get; init; }

    /// <summary>Whether no new circuit starts here.</summary>
    public bool NoNewCircuits { get; init; }

    /// <summary>Circuits that are in it already; in a new panel, those of the panel that it takes the place of.</summary>
    public ImmutableArray<ExistingCircuit> Circuits { get; init; } = [];

    /// <summary>The year's highest measured demand of the dwelling; null when not known.</summary>
    public Power? MeasuredDemandVa { get; init; }

    /// <summary>Floor area of the dwelling outside the rooms of the job, in square feet; null when not known. An existing service can't be calculated without it.</summary>
    public Area? OtherAreaSqFt { get; init; }
}
