using Estimator.Engine.Measures;

namespace Estimator.Engine.Payments;

/// <summary>A line of the contract's schedule of values, or an accepted change order.</summary>
/// <param name="Id">Stable id, such as <c>rough_in</c> or <c>change-1</c>.</param>
/// <param name="Title">What is done when it is earned.</param>
/// <param name="Value">What it is worth; below zero for a change that takes away more than it adds.</param>
public sealed record ContractLine(string Id, string Title, Money Value);
