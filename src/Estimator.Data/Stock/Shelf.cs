using System.Collections.Immutable;
using Estimator.Engine.Purchase;

namespace Estimator.Data.Stock;

/// <summary>What the company has already.</summary>
/// <param name="Counts">Units of items, by item.</param>
/// <param name="Pieces">Partial coils and reels, by item and number.</param>
public sealed record Shelf(ImmutableArray<ShelfCount> Counts, ImmutableArray<ShelfPiece> Pieces)
{
    /// <summary>As the engine takes it.</summary>
    public StockOnHand ToStock() => new([.. Pieces.Select(p => new StockPiece(p.Item, p.Label, p.Length))], [.. Counts.Select(c => new StockCount(c.Item, c.Count))]);
}
