using Estimator.Engine.Explanations;
using Estimator.Engine.Rules;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;

namespace Estimator.Web.Site;

/// <summary>What one thing that nobody knows does to the high end of the range.</summary>
/// <param name="Dollars">Dollars that it adds.</param>
/// <param name="Percent">The same as a share of the likely price.</param>
/// <param name="Source">What both are explained from.</param>
public sealed record UnknownEffect(Fact Dollars, Fact Percent, FigureSource Source)
{
    private const int PageNumber = FigurePages.Unknowns;

    /// <summary>The effect in an estimate.</summary>
    public static UnknownEffect Of(PricedJob priced)
    {
        var page = new PageWriter(PageNumber);
        var percent = BidDefaults.SpreadUnknownPercent.Read(page, Unit.Percent);
        var dollars = page.Compute(Operation.PercentOf, "spread-unknowns", "What each unknown adds to the high end", Unit.Dollars, priced.Estimate.Bid.Price, percent);
        return new UnknownEffect(dollars, percent, new FigureSource(new ExplanationBook(priced.Estimate.Book.Pages.Append(page.ToPage())), priced.Job));
    }
}
