using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase.Suppliers;

/// <summary>A way to divide what is bought among suppliers.</summary>
/// <param name="Orders">An order for each supplier that gets one, in the order of the terms.</param>
/// <param name="Missing">Ids of items that this way does not get, in no total.</param>
/// <param name="LowerBound">No way of this kind that gets the same items costs less than this.</param>
public sealed record SupplyChoice(ImmutableArray<SupplierOrder> Orders, ImmutableArray<string> Missing, Money LowerBound)
{
    /// <summary>Goods, filling up and deliveries of all orders.</summary>
    public Money Total => Orders.Aggregate(Money.Zero, (sum, o) => sum + o.Total);

    /// <summary>Whether the choice is proven cheapest of its kind.</summary>
    public bool Proven => Total == LowerBound;

    /// <summary>Who brings an item; null where nobody does.</summary>
    public string? SupplierOf(string item) => Orders.FirstOrDefault(o => o.Items.Contains(item, StringComparer.Ordinal))?.Supplier;
}
