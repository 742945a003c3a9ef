using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Web.Jobs;

namespace Estimator.Web.Budget;

/// <summary>A pack whose local price is worth asking for.</summary>
/// <param name="Item">Id of the item.</param>
/// <param name="Description">What it is.</param>
/// <param name="Unit">each or foot.</param>
/// <param name="Offer">The pack that is bought most of, at the price in force.</param>
public sealed record LocalAsk(string Item, string Description, string Unit, Offer Offer)
{
    /// <summary>The pack in words.</summary>
    public string Pack => Unit == "foot" ? $"coil of {Offer.PackSize} ft" : Offer.PackSize == 1 ? "each" : $"pack of {Offer.PackSize}";

    /// <summary>The dearest lines of what a job buys; those with an own price come first.</summary>
    public static ImmutableArray<LocalAsk> Of(PricedJob priced, int most) =>
    [
        .. priced.Estimate.Purchase.Lines.Where(l => l.Cost is not null && l.Packs.Length > 0)
            .Select(l => (Line: l, Main: l.Packs.MaxBy(p => p.Count * p.Offer.Price.ToDollars())!.Offer))
            .OrderBy(l => l.Main.IsSample).ThenByDescending(l => l.Line.Cost!.Value.Value.ToDollars()).Take(most)
            .Select(l => new LocalAsk(l.Line.ItemId, l.Line.Description, l.Line.Unit, l.Main)),
    ];

    /// <summary>How many of the lines that a job buys rest on own prices alone.</summary>
    public static int Given(PricedJob priced) => priced.Estimate.Purchase.Lines.Count(l => l.Packs.Length > 0 && l.Packs.All(p => !p.Offer.IsSample));

    /// <summary>How many must, before its dollars are believed.</summary>
    public static int Wanted(PricedJob priced) => Math.Min(BudgetTable.LocalPrices, priced.Estimate.Purchase.Lines.Count(l => l.Packs.Length > 0));
}
