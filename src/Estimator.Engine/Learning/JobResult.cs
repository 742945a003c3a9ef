using Estimator.Engine.Explanations;

namespace Estimator.Engine.Learning;

/// <summary>What a job left.</summary>
/// <param name="Hours">All hours that were worked.</param>
/// <param name="Labor">Their cost at the crew's loaded hour.</param>
/// <param name="Cost">Direct cost with them in the place of the estimated labor; material and the rest as estimated.</param>
/// <param name="Left">The price less that and less overhead.</param>
/// <param name="LeftPercent">The same as a share of the price.</param>
public sealed record JobResult(Fact Hours, Fact Labor, Fact Cost, Fact Left, Fact LeftPercent)
{
    /// <summary>The result of a job.</summary>
    /// <remarks>Contingency is money kept for what went otherwise, so what is left of it is part of the result. Source: common practice, no source.</remarks>
    /// <param name="page">The page that it is worked out on.</param>
    /// <param name="estimate">Its estimate.</param>
    /// <param name="hours">Hours that were worked.</param>
    public static JobResult Of(PageWriter page, JobEstimate estimate, Fact hours)
    {
        var bid = estimate.Bid;
        var labor = Cents.Round(page, page.Compute(Operation.Product, "actual-labor", "Hours worked at the crew's loaded cost", Unit.Dollars, hours, bid.HourCost));
        var others = page.Sum("actual-others", "Direct cost without labor, as estimated", Unit.Dollars, [.. bid.DirectCost.Where(l => l.Id != "labor").Select(l => l.Amount)]);
        var cost = page.Compute(Operation.Sum, "actual-cost", "Direct cost with the hours worked", Unit.Dollars, labor, others);
        var left = page.Compute(Operation.Difference, "job-left", "Left of the price", Unit.Dollars, bid.Price, cost, bid.Additions.Single(l => l.Id == "overhead").Amount);
        return new JobResult(hours, labor, cost, left, Pricing.Markup.Share(page, "Left, as a share of the price", left, bid.Price));
    }
}
