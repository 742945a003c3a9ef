using Estimator.Engine.Explanations;
using Estimator.Engine.Purchase.Suppliers;

namespace Estimator.Web.Orders;

/// <summary>The figures of one supplier's order.</summary>
/// <param name="Order">The order.</param>
/// <param name="Goods">What its goods cost.</param>
/// <param name="FillUp">What is added to reach the minimum; null where nothing is.</param>
/// <param name="Delivery">What the delivery costs; null where nothing is charged.</param>
/// <param name="Total">All together.</param>
public sealed record SupplyOrderFigures(SupplierOrder Order, Fact Goods, Fact? FillUp, Fact? Delivery, Fact Total);
