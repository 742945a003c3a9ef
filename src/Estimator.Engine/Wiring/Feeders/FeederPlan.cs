using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;

namespace Estimator.Engine.Wiring.Feeders;

/// <summary>The feeders of a job.</summary>
/// <param name="Feeders">One for each new panel that another panel feeds.</param>
/// <param name="Findings">Feeders that no cable of the tables carries.</param>
/// <param name="Page">Page of the explanation book.</param>
public sealed record FeederPlan(ImmutableArray<Feeder> Feeders, ImmutableArray<Finding> Findings, ExplanationPage Page);
