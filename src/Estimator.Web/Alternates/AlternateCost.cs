using System.Collections.Immutable;
using Estimator.Engine.Alternates;
using Estimator.Web.Explanations;
using Estimator.Web.Jobs;

namespace Estimator.Web.Alternates;

/// <summary>Alternates taken together as the page shows them: with a price, or with the reason why there is none.</summary>
/// <param name="Ids">Ids of the alternates.</param>
/// <param name="Priced">What they do; null where they can't be made.</param>
/// <param name="Problem">Why they can't be made.</param>
/// <param name="Source">What their figures are explained from.</param>
public sealed record AlternateCost(ImmutableArray<string> Ids, PricedAlternate? Priced, string? Problem, FigureSource? Source)
{
    private const int MostParts = 4;

    /// <summary>The first parts that they add or take away, in words.</summary>
    public string Parts => Priced is null ? "" : string.Join(", ", Priced.Parts.Where(p => p.Unit == "foot" || Math.Abs(p.Quantity) >= 1).Take(MostParts)
        .Select(p => $"{Figures.American.Change(p.Quantity)} {(p.Unit == "foot" ? "ft " : "")}{p.Description}"));

    /// <summary>Works them out. Takes long: not on a tab's thread.</summary>
    internal static AlternateCost Of(PricedJob priced, ImmutableArray<string> ids)
    {
        var cost = AlternatePricing.For(priced.Estimate, ids, priced.Catalogue.Parts);
        return cost.Ok ? new AlternateCost(ids, cost.Value, null, new FigureSource(cost.Value.Book, cost.Value.After.House.Job)) : new AlternateCost(ids, null, cost.Problem, null);
    }
}
