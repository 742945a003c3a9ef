namespace Estimator.Data.Stock;

/// <summary>So many units of an item on the shelf.</summary>
/// <param name="Item">The item.</param>
/// <param name="Count">Units; zero takes the item off the shelf.</param>
/// <param name="Version">Version that it was read at; 0 for a new one.</param>
public sealed record ShelfCount(string Item, decimal Count, int Version);
