using Estimator.Engine.Explanations;

namespace Estimator.Engine.Loads;

/// <summary>A line of a load worksheet.</summary>
/// <param name="Id">Stable id.</param>
/// <param name="Label">What it is.</param>
/// <param name="Value">The figure.</param>
public sealed record LoadLine(string Id, string Label, Fact Value);
