using Estimator.Engine.Explanations;

namespace Estimator.Engine.Payments;

/// <summary>A line of a schedule of values.</summary>
/// <param name="Id">Stable id, such as <c>rough_in</c>.</param>
/// <param name="Title">What is done when it is earned.</param>
/// <param name="Value">Its share of the price, in whole cents.</param>
public sealed record ScheduleLine(string Id, string Title, Fact Value);
