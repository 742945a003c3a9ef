namespace Estimator.Engine.Purchase.Cutting;

/// <summary>Pieces that are wanted in one length.</summary>
/// <param name="Length">Their length, in the unit of the problem.</param>
/// <param name="Quantity">How many.</param>
public sealed record CuttingItem(int Length, int Quantity);
