using Estimator.Engine.House;

namespace Estimator.Engine.Framing;

/// <summary>An opening in canonical pose, as it breaks one side of one room; an opening between two rooms appears once for each.</summary>
public sealed record FramedOpening
{
    /// <summary>What the user stated.</summary>
    public required Opening Source { get; init; }

    /// <summary>The room whose side it breaks.</summary>
    public required int Room { get; init; }

    /// <summary>The room on the other side; -1 for outside.</summary>
    public required int OtherRoom { get; init; }

    /// <summary>The side of the room.</summary>
    public required int Side { get; init; }

    /// <summary>Start along the side, in sixteenths.</summary>
    public required int From { get; init; }

    /// <summary>End along the side, in sixteenths.</summary>
    public required int To { get; init; }

    /// <summary>Underside above the floor, in sixteenths.</summary>
    public required int Sill { get; init; }

    /// <summary>Top above the floor, in sixteenths.</summary>
    public required int Head { get; init; }

    /// <summary>Whether it breaks the wall at the floor line: doors, and wide openings.</summary>
    public bool BreaksFloorLine => Source.Kind is not OpeningKind.Window;
}
