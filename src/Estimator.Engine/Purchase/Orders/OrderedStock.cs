using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase.Orders;

/// <summary>What jobs have besides the shelf: packs that were ordered for them and neither cancelled nor returned. So what is still to buy is need less shelf less orders.</summary>
public static class OrderedStock
{
    /// <summary>The shelf with what was ordered for the jobs. A coil counts as one piece of its length, every other pack by its units.</summary>
    /// <param name="shelf">What the firm has.</param>
    /// <param name="orders">The orders for the jobs, each with what it is called.</param>
    /// <param name="catalogue">Says which items are cable.</param>
    public static StockOnHand With(StockOnHand shelf, IEnumerable<(string Name, PurchaseOrder Order)> orders, PartsCatalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(orders);
        var (pieces, counts) = (shelf.Pieces.ToBuilder(), shelf.Counts.ToBuilder());
        foreach (var (name, order) in orders)
        {
            foreach (var line in order.Standing.Where(l => l.Covers > 0))
            {
                if (catalogue.Find(line.Line.Item)?.Category == "cable")
                {
                    pieces.AddRange(Enumerable.Range(1, line.Covers).Select(i => new StockPiece(line.Line.Item, $"{name}, line {line.Line.Line}, coil {i}", Length.FromFeet(line.Line.PackSize))));
                }
                else
                {
                    counts.Add(new StockCount(line.Line.Item, (decimal)line.Covers * line.Line.PackSize));
                }
            }
        }

        return new StockOnHand(pieces.ToImmutable(), counts.ToImmutable());
    }
}
