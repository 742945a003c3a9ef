using Estimator.Engine.Explanations;

namespace Estimator.Engine.Pricing.Ranges;

/// <summary>What the draws start from: the price without its contingency, which is the money for draws that turn out worse.</summary>
internal sealed class RangeBase
{
    /// <summary>The base of a price.</summary>
    /// <param name="page">Where it is explained.</param>
    /// <param name="direct">Direct cost.</param>
    /// <param name="cost">All cost, contingency in it.</param>
    /// <param name="contingency">The contingency.</param>
    /// <param name="price">The price.</param>
    internal RangeBase(PageWriter page, Fact direct, Fact cost, Fact contingency, Fact price)
    {
        (Direct, Price) = (direct, price);
        Share = cost.Value == 0
            ? page.Constant("All of the price", 1)
            : page.Compute(Operation.Quotient, "range-base", "Share of the cost that is no contingency", Unit.Factor, page.Compute(Operation.Difference, "range-base", "Cost without contingency", Unit.Dollars, cost, contingency), cost);
        Dollars = page.Compute(Operation.Product, "range-base", "Price without contingency", Unit.Dollars, price, Share);
    }

    /// <summary>Direct cost.</summary>
    internal Fact Direct { get; }

    /// <summary>The price.</summary>
    internal Fact Price { get; }

    /// <summary>The share of the cost that is no contingency, a factor.</summary>
    internal Fact Share { get; }

    /// <summary>The price without contingency.</summary>
    internal Fact Dollars { get; }
}
