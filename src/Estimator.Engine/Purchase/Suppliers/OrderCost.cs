using System.Collections.Immutable;

namespace Estimator.Engine.Purchase.Suppliers;

/// <summary>What an order costs beside its goods, in ten-thousandths of a dollar.</summary>
/// <param name="Delivery">What a delivery costs.</param>
/// <param name="Minimum">The least that an order must come to.</param>
/// <param name="FreeFrom">Goods from which delivery is free; the greatest number where it never is.</param>
internal readonly record struct OrderCost(long Delivery, long Minimum, long FreeFrom)
{
    /// <summary>Amounts of goods at which an order grows cheaper beside its goods.</summary>
    internal ImmutableArray<long> Goals => FreeFrom == long.MaxValue || Delivery == 0 ? [Minimum] : FreeFrom <= Minimum ? [Minimum] : [Minimum, FreeFrom];

    /// <summary>No order costs less, goods and all: it reaches the minimum and pays the delivery, or reaches what makes that free.</summary>
    internal long Floor => Math.Min(Minimum + Charge(0), Math.Max(Minimum, FreeFrom));

    internal static OrderCost Of(SupplierTerms terms) =>
        new(SupplySearch.ToUnits(terms.Delivery), SupplySearch.ToUnits(terms.Minimum), terms.FreeFrom is { } free ? SupplySearch.ToUnits(free) : long.MaxValue);

    /// <summary>Filling up and delivery of some goods.</summary>
    internal long Extra(long goods) => Math.Max(0, Minimum - goods) + Charge(goods);

    /// <summary>Delivery of some goods.</summary>
    internal long Charge(long goods) => Math.Max(goods, Minimum) >= FreeFrom ? 0 : Delivery;
}
