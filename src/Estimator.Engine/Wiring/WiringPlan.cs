using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Circuits;
using Estimator.Engine.Wiring.Feeders;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring;

/// <summary>Circuits, runs and boxes, found together.</summary>
public sealed record WiringPlan
{
    /// <summary>Circuits in panel order, then by kind and zone.</summary>
    public required ImmutableArray<Circuit> Circuits { get; init; }

    /// <summary>Runs, grouped by circuit.</summary>
    public required ImmutableArray<Run> Runs { get; init; }

    /// <summary>Boxes; a box's index is its place here. Recessed lights with their own wiring box stand here too.</summary>
    public required ImmutableArray<Box> Boxes { get; init; }

    /// <summary>Feeders of new panels that another panel feeds.</summary>
    public ImmutableArray<Feeder> Feeders { get; init; } = [];

    /// <summary>What the solve assumed, changed from round to round, or could not do.</summary>
    public ImmutableArray<Finding> Findings { get; init; } = [];

    /// <summary>Planning cost of the whole plan, in ten-thousandths of a dollar.</summary>
    public required long PlanningCostE4 { get; init; }

    /// <summary>Pages of the explanation book, one a group, the feeders' last.</summary>
    public required ImmutableArray<ExplanationPage> Pages { get; init; }

    /// <summary>The circuit whose breaker feeds a circuit: its own, or the other of a multiwire circuit that brings the two-pole breaker of both.</summary>
    public Circuit BreakerOf(Circuit circuit) => circuit.LeavesCommonHomeRun ? Circuits[circuit.SharesNeutralWith!.Value] : circuit;
}
