using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase.Suppliers;

/// <summary>On what terms a supplier takes an order.</summary>
/// <param name="Supplier">Its name, as in the offers.</param>
/// <param name="Delivery">What a delivery costs; zero where the goods are fetched.</param>
/// <param name="Minimum">The least that an order must come to; zero where any will do.</param>
/// <param name="FreeFrom">Goods from which delivery costs nothing; null where it always costs.</param>
public sealed record SupplierTerms(string Supplier, Money Delivery, Money Minimum, Money? FreeFrom)
{
    /// <summary>The terms of a supplier of whom none are known: no charge, no minimum.</summary>
    public static SupplierTerms None(string supplier) => new(supplier, Money.Zero, Money.Zero, null);

    /// <summary>What is added to goods so that the order reaches the minimum: bought for stock, or paid as a charge on a small order.</summary>
    /// <param name="goods">What the goods cost.</param>
    public Money FillUp(Money goods) => goods < Minimum ? Minimum - goods : Money.Zero;

    /// <summary>What the delivery of such goods costs.</summary>
    /// <param name="goods">What the goods cost, before filling up.</param>
    public Money DeliveryOf(Money goods) => goods + FillUp(goods) >= FreeFrom ? Money.Zero : Delivery;
}
