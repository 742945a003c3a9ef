using Estimator.Engine.Measures;

namespace Estimator.Engine.Contracts;

/// <summary>A line of a change order.</summary>
/// <param name="Kind">What it does.</param>
/// <param name="Text">What is added, taken out or given back.</param>
/// <param name="Quantity">How many, or how many feet.</param>
/// <param name="Unit">each, foot or hour.</param>
/// <param name="Amount">What it adds to the price; below zero for a credit; null where the line is in the sum and has no price of its own.</param>
public sealed record ChangeLine(ChangeLineKind Kind, string Text, decimal Quantity, string Unit, Money? Amount);
