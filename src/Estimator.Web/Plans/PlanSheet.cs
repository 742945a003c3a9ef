using System.Collections.Immutable;

namespace Estimator.Web.Plans;

/// <summary>A level as it is drawn: everything in feet on the sheet.</summary>
public sealed record PlanSheet
{
    /// <summary>Index of the level.</summary>
    public required int Level { get; init; }

    /// <summary>What people call it.</summary>
    public required string Name { get; init; }

    /// <summary>How the house lies on the sheet.</summary>
    public required SheetFrame Frame { get; init; }

    /// <summary>Letters and numbers at the edge.</summary>
    public required SheetGrid Grid { get; init; }

    /// <summary>Rooms, those without walls first.</summary>
    public required ImmutableArray<DrawnRoom> Rooms { get; init; }

    /// <summary>Walls.</summary>
    public required DrawnWalls Walls { get; init; }

    /// <summary>Openings.</summary>
    public required ImmutableArray<DrawnOpening> Openings { get; init; }

    /// <summary>Devices and outlets of equipment.</summary>
    public required ImmutableArray<DrawnOutlet> Outlets { get; init; }

    /// <summary>Panels.</summary>
    public required ImmutableArray<DrawnPanel> Panels { get; init; }

    /// <summary>Runs, in the order of their circuits.</summary>
    public required ImmutableArray<DrawnRun> Runs { get; init; }

    /// <summary>Numbers of the circuits beside their home runs.</summary>
    public required ImmutableArray<CircuitTag> Tags { get; init; }

    /// <summary>Findings that have a place here.</summary>
    public required ImmutableArray<DrawnFinding> Findings { get; init; }

    /// <summary>Whether rooms were arranged because only sizes were given.</summary>
    public bool Arranged => Rooms.Any(r => r.Arranged);
}
