using Estimator.Engine.Explanations;
using Estimator.Engine.House;

namespace Estimator.Engine.Pricing;

/// <summary>Markup and margin.</summary>
/// <remarks>Price = cost x (1 + markup); margin = (price - cost) / price. Source: contractor finance guide on overhead and markup; arithmetic.</remarks>
public static class Markup
{
    /// <summary>Profit, stated as a share of cost or of price.</summary>
    public static Fact Profit(PageWriter page, Fact cost, Fact percent, ProfitBasis? basis) =>
        basis is ProfitBasis.Margin ? ProfitFromMargin(page, cost, percent) : ProfitFromMarkup(page, cost, percent);

    /// <summary>Profit for a markup on cost.</summary>
    public static Fact ProfitFromMarkup(PageWriter page, Fact cost, Fact markupPercent) =>
        page.Compute(Operation.PercentOf, "profit-markup", "Profit as a share of cost", Unit.Dollars, cost, markupPercent);

    /// <summary>Profit for a margin of the price.</summary>
    public static Fact ProfitFromMargin(PageWriter page, Fact cost, Fact marginPercent)
    {
        var rest = page.Compute(Operation.Difference, "profit-margin", "Share of the price that is cost", Unit.Percent, page.Constant("All of the price", 100, Unit.Percent), marginPercent);
        var onePercent = page.Compute(Operation.Quotient, "profit-margin", "One percent of the price", Unit.Dollars, cost, rest);
        return page.Compute(Operation.Product, "profit-margin", "Profit as a share of price", Unit.Dollars, onePercent, marginPercent);
    }

    /// <summary>A share in percent.</summary>
    public static Fact Share(PageWriter page, string label, Fact part, Fact whole)
    {
        if (whole.Value == 0)
        {
            return page.Constant(label, 0, Unit.Percent);
        }

        var ratio = page.Compute(Operation.Quotient, "share", label, Unit.Factor, part, whole);
        return page.Compute(Operation.Product, "share", label, Unit.Percent, ratio, page.Constant("Hundredths", 100));
    }
}
