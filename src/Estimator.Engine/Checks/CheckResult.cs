using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;

namespace Estimator.Engine.Checks;

/// <summary>What the checks found.</summary>
/// <param name="Findings">The findings, worst first.</param>
/// <param name="Applied">Codes of the rules that applied to something in the house.</param>
/// <param name="Page">Page of the explanation book.</param>
public sealed record CheckResult(ImmutableArray<Finding> Findings, ImmutableHashSet<string> Applied, ExplanationPage Page);
