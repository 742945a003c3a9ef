using Estimator.Engine.Explanations;

namespace Estimator.Engine.Loads;

/// <summary>A line of a load worksheet.</summary>
/// <param name="Id">Stable id.</param>
/// <param name="Label">What it is.</param>
/// <param name="Value">The figure.</param>
/// <param name="Article">Where its rule stands in the edition; empty for plain arithmetic.</param>
/// <param name="Verified">Whether the rule was seen in the edition.</param>
public sealed record LoadLine(string Id, string Label, Fact Value, string Article = "", bool Verified = true);
