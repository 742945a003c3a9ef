namespace Estimator.Engine.Purchase.Cutting;

/// <summary>A length that can be had.</summary>
/// <param name="Length">Its length, in the unit of the problem.</param>
/// <param name="Price">Its price, in whole units of money such as cents.</param>
/// <param name="Count">How many there are; null where any number can be bought.</param>
public sealed record CuttingStock(int Length, long Price, int? Count = null);
