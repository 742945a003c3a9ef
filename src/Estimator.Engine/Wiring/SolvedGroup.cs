using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.Wiring.Circuits;

namespace Estimator.Engine.Wiring;

/// <summary>A group's circuits with the page that explains them.</summary>
internal sealed record SolvedGroup(WiringGroup Group, ImmutableArray<SolvedCircuit> Circuits, ImmutableArray<Finding> Findings, ExplanationPage Page);
