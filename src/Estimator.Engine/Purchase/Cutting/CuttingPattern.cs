using System.Collections.Immutable;

namespace Estimator.Engine.Purchase.Cutting;

/// <summary>One stock and the pieces cut from it.</summary>
/// <param name="Stock">Index of the stock in the problem.</param>
/// <param name="Items">Index of the item of each piece, longest first.</param>
public sealed record CuttingPattern(int Stock, ImmutableArray<int> Items);
