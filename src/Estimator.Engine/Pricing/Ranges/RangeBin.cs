namespace Estimator.Engine.Pricing.Ranges;

/// <summary>A column of the histogram.</summary>
/// <param name="From">Where it starts, in dollars; this price is in it.</param>
/// <param name="To">Where it ends, in dollars; this price is in the next.</param>
/// <param name="Draws">How many draws fall in it.</param>
public sealed record RangeBin(decimal From, decimal To, int Draws);
