namespace Estimator.Engine.Purchase.Cutting;

/// <summary>One stock and the items cut from it.</summary>
/// <param name="Stock">Index of the stock in the model.</param>
/// <param name="Items">Index of the item of each piece, longest first.</param>
internal sealed record Bin(int Stock, int[] Items);
