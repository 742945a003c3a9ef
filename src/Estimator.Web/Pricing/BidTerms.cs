using System.Runtime.CompilerServices;
using Estimator.Engine.Explanations;
using Estimator.Engine.Rules;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;

namespace Estimator.Web.Pricing;

/// <summary>Terms of the bid that no stage computes, each with its explanation.</summary>
/// <param name="ValidDays">Days that the bid stands.</param>
/// <param name="Source">What explains it.</param>
public sealed record BidTerms(Fact ValidDays, FigureSource Source)
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = FigurePages.Bid;

    private static readonly ConditionalWeakTable<PricedJob, BidTerms> Known = [];

    /// <summary>The terms of a priced job.</summary>
    public static BidTerms Of(PricedJob priced) => Known.GetValue(priced, Draw);

    private static BidTerms Draw(PricedJob priced)
    {
        var page = new PageWriter(PageNumber);
        var days = priced.Job.Bid.ValidDays is { } own ? page.Given("$.bid.valid_days", "Days that the bid stands", own, Unit.Each) : BidDefaults.ValidDays.Read(page, Unit.Each);
        return new BidTerms(days, priced.Source.With(page.ToPage()));
    }
}
