namespace Estimator.Engine.Purchase;

/// <summary>So many units of an item on the shelf.</summary>
/// <param name="ItemId">The item.</param>
/// <param name="Count">Units, in the catalogue's unit of the item.</param>
public sealed record StockCount(string ItemId, decimal Count);
