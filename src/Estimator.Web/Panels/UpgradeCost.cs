using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Upgrades;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;

namespace Estimator.Web.Panels;

/// <summary>What a way to give a panel room adds: the job with it, worked out whole, less the job as it stands.</summary>
/// <param name="Way">The way.</param>
/// <param name="Hours">Hours that it adds.</param>
/// <param name="Dollars">Dollars that it adds to the price.</param>
/// <param name="Parts">Its main parts in words.</param>
/// <param name="Source">What the figures are explained from.</param>
public sealed record UpgradeCost(PricedUpgrade Way, Fact Hours, Fact Dollars, string Parts, FigureSource Source)
{
    private const int PageNumber = FigurePages.Upgrade;
    private const int MostParts = 7;

    // Small parts follow from these; they are in the price.
    private static readonly ImmutableArray<string> Told = ["cable", "breaker", "panel", "service"];

    /// <summary>What it adds to a job.</summary>
    public static UpgradeCost Of(PricedJob priced, PricedUpgrade way)
    {
        var page = new PageWriter(PageNumber);
        var hours = page.Compute(
            Operation.Difference, "upgrade-hours", "Hours that it adds", Unit.Hours, page.Given("$", "Hours of the same job with it, worked out whole", way.After.Labor.Total.Value, Unit.Hours), priced.Estimate.Labor.Total);
        var dollars = page.Compute(
            Operation.Difference, "upgrade-price", "What it adds to the price", Unit.Dollars, page.Given("$", "Price of the same job with it, worked out whole", way.After.Bid.Price.Value, Unit.Dollars), priced.Estimate.Bid.Price);
        return new UpgradeCost(way, hours, dollars, Words(priced, way), new FigureSource(new ExplanationBook(priced.Source.Book.Pages.Append(page.ToPage())), priced.Job));
    }

    private static string Words(PricedJob priced, PricedUpgrade way)
    {
        var parts = way.Added.Where(a => a.Quantity > 0 && priced.Catalogue.Parts.Find(a.ItemId) is { } item && Told.Contains(item.Category)).ToList();
        var told = parts.Take(MostParts).Select(a => a.Unit == "foot" ? $"{American.Number(decimal.Round(a.Quantity, 0, MidpointRounding.AwayFromZero))} ft {a.Description}" : $"{American.Number(a.Quantity)} × {a.Description}");
        return parts.Count > MostParts ? $"{string.Join("; ", told)}; and {parts.Count - MostParts} more" : string.Join("; ", told);
    }
}
