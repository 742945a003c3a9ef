using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;

namespace Estimator.Engine.Takeoff;

/// <summary>Quantities of catalogue items.</summary>
public sealed record TakeoffResult
{
    /// <summary>The lines, in catalogue order.</summary>
    public required ImmutableArray<TakeoffLine> Lines { get; init; }

    /// <summary>Every device and luminaire, for labor.</summary>
    public required ImmutableArray<CountedDevice> Devices { get; init; }

    /// <summary>Feet of cable in places that slow the work, by item and place; parts of the items' lines.</summary>
    public required ImmutableArray<PlacedCable> SlowCable { get; init; }

    /// <summary>Every run of cable as it is cut.</summary>
    public required ImmutableArray<CablePiece> Pieces { get; init; }

    /// <summary>From which length the end of a coil is worth keeping.</summary>
    public required Fact UsefulEnd { get; init; }

    /// <summary>Outlets and switches: the openings of the job.</summary>
    public required Fact Openings { get; init; }

    /// <summary>Items that the catalogue lacks.</summary>
    public ImmutableArray<Finding> Findings { get; init; } = [];

    /// <summary>Page of the explanation book.</summary>
    public required ExplanationPage Page { get; init; }
}
