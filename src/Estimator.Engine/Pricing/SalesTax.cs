using Estimator.Engine.Explanations;
using Estimator.Engine.House;

namespace Estimator.Engine.Pricing;

/// <summary>Sales tax, which is part of the cost of material or charged on to the customer.</summary>
/// <remarks>
/// A contractor at one sum is in most states the consumer of his material and pays the tax when he buys (California Regulation 1521; Texas Rule 3.291). Where material is sold
/// at a stated price the customer is charged, on the price with its markup (California sales and use tax annotation 190.2545). Some places tax the whole contract (Jefferson Parish,
/// Louisiana, rule 35). Which holds is a setting; rates and rules are the state's.
/// </remarks>
internal static class SalesTax
{
    /// <summary>The tax on what is bought.</summary>
    internal static Fact OnCost(PageWriter page, Fact material, Fact rate) => page.Compute(Operation.PercentOf, "material-tax", "Tax on material", Unit.Dollars, material, rate);

    /// <summary>The tax that the customer is charged.</summary>
    /// <param name="page">The page that it is worked out on.</param>
    /// <param name="on">What it falls on.</param>
    /// <param name="rate">Its rate, percent.</param>
    /// <param name="material">Material at cost.</param>
    /// <param name="direct">Direct cost, material in it.</param>
    /// <param name="price">The price without tax.</param>
    internal static Fact Charged(PageWriter page, SalesTaxOn on, Fact rate, Fact material, Fact direct, Fact price) =>
        page.Compute(Operation.PercentOf, "sales-tax", "Sales tax charged on", Unit.Dollars, on is SalesTaxOn.WholePrice || direct.Value == 0 ? price : MaterialCharged(page, material, direct, price), rate);

    // Material is charged at its share of the direct cost, so with its part of overhead, contingency and profit.
    private static Fact MaterialCharged(PageWriter page, Fact material, Fact direct, Fact price)
    {
        var share = page.Compute(Operation.Quotient, "material-charged", "Price for each dollar of direct cost", Unit.Factor, price, direct);
        return page.Compute(Operation.Product, "material-charged", "Price that material is charged at", Unit.Dollars, material, share);
    }
}
