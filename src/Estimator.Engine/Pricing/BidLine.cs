using Estimator.Engine.Explanations;

namespace Estimator.Engine.Pricing;

/// <summary>A line of the bid.</summary>
/// <param name="Id">Stable id, such as <c>material</c>.</param>
/// <param name="Label">What it is.</param>
/// <param name="Amount">The amount, to the cent.</param>
public sealed record BidLine(string Id, string Label, Fact Amount);
