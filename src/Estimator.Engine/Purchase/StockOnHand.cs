using System.Collections.Immutable;

namespace Estimator.Engine.Purchase;

/// <summary>What the firm has already: it is used before anything is bought.</summary>
/// <param name="Pieces">Partial coils and reels.</param>
/// <param name="Counts">Units of other items.</param>
public sealed record StockOnHand(ImmutableArray<StockPiece> Pieces, ImmutableArray<StockCount> Counts)
{
    /// <summary>An empty shelf.</summary>
    public static StockOnHand Empty { get; } = new([], []);

    /// <summary>Units of an item on the shelf.</summary>
    public decimal CountOf(string itemId) => Counts.Where(c => c.ItemId == itemId).Sum(c => c.Count);
}
