using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase.Suppliers;

/// <summary>What one supplier is to bring.</summary>
/// <param name="Supplier">Its name.</param>
/// <param name="Items">Ids of the items.</param>
/// <param name="Goods">What they cost.</param>
/// <param name="FillUp">What is added so that the order reaches the supplier's minimum.</param>
/// <param name="Delivery">What the delivery costs.</param>
public sealed record SupplierOrder(string Supplier, ImmutableArray<string> Items, Money Goods, Money FillUp, Money Delivery)
{
    /// <summary>All together.</summary>
    public Money Total => Goods + FillUp + Delivery;
}
