using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Circuits;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring;

/// <summary>A circuit of a group with its runs and boxes. Boxes are named by draft index; the assembly numbers them.</summary>
internal sealed record SolvedCircuit(
    DraftCircuit Draft, CircuitTree Tree, ImmutableArray<Run> Runs, ImmutableArray<Box> Boxes, Fact LoadVa, Fact DropPercent, WireSize Wire);
