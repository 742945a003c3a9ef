using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Purchase.Suppliers;

namespace Estimator.Web.Orders;

/// <summary>A way to divide the purchase, with its figures.</summary>
/// <param name="Wish">The way.</param>
/// <param name="Choice">Who brings what.</param>
/// <param name="Orders">Goods, what is added to reach a minimum, and delivery of each order.</param>
/// <param name="Total">All orders together.</param>
public sealed record SupplyOption(SupplyWish Wish, SupplyChoice Choice, ImmutableArray<SupplyOrderFigures> Orders, Fact Total);
