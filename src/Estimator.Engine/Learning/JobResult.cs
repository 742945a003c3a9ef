using Estimator.Engine.Explanations;

namespace Estimator.Engine.Learning;

/// <summary>What a job left.</summary>
/// <param name="Hours">All hours that were worked.</param>
/// <param name="Labor">Their cost at the crew's loaded hour.</param>
/// <param name="Material">What the material that was written down cost more than estimated, below zero where less; null where none was.</param>
/// <param name="Cost">Direct cost with the hours worked and the material used; what was not written down, and the rest, as estimated.</param>
/// <param name="Left">The price less that and less overhead.</param>
/// <param name="LeftPercent">The same as a share of the price.</param>
public sealed record JobResult(Fact Hours, Fact Labor, Fact? Material, Fact Cost, Fact Left, Fact LeftPercent)
{
    /// <summary>The result of a job.</summary>
    /// <remarks>
    /// Material that was used counts at what the estimate pays for each piece or foot that it needs, leftovers of packs in it, so that what was used as it was taken off costs as estimated. An item that
    /// nobody offers costs nothing either way. Contingency is money kept for what went otherwise, so what is left of it is part of the result. Source: common practice, no source.
    /// </remarks>
    /// <param name="page">The page that it is worked out on.</param>
    /// <param name="estimate">Its estimate.</param>
    /// <param name="hours">Hours that were worked.</param>
    /// <param name="used">Material that was used, by item, as far as it was written down.</param>
    public static JobResult Of(PageWriter page, JobEstimate estimate, Fact hours, IReadOnlyDictionary<string, Fact> used)
    {
        var bid = estimate.Bid;
        var labor = Cents.Round(page, page.Compute(Operation.Product, "actual-labor", "Hours worked at the crew's loaded cost", Unit.Dollars, hours, bid.HourCost));
        var others = page.Sum("actual-others", "Direct cost without labor, as estimated", Unit.Dollars, [.. bid.DirectCost.Where(l => l.Id != "labor").Select(l => l.Amount)]);
        var material = More(page, estimate, used);
        var cost = page.Sum("actual-cost", "Direct cost with what was worked and used", Unit.Dollars, [labor, others, .. material is { } more ? [more] : Array.Empty<Fact>()]);
        var left = page.Compute(Operation.Difference, "job-left", "Left of the price", Unit.Dollars, bid.Price, cost, bid.Additions.Single(l => l.Id == "overhead").Amount);
        return new JobResult(hours, labor, material, cost, left, Pricing.Markup.Share(page, "Left, as a share of the price", left, bid.Price));
    }

    private static Fact? More(PageWriter page, JobEstimate estimate, IReadOnlyDictionary<string, Fact> used)
    {
        List<Fact> parts = [];
        foreach (var line in estimate.Purchase.Lines.Where(l => l.Cost is not null && l.Needed.Value > 0 && used.ContainsKey(l.ItemId)))
        {
            var paid = page.Compute(Operation.Quotient, "material-price", $"{line.Description}, what the estimate pays for each that it needs", Unit.Dollars, new Fact(line.Cost!.Value.Value.ToDollars(), Unit.Dollars, line.Cost.Value.Node), line.Needed);
            var more = page.Compute(Operation.Difference, "material-more", $"{line.Description}, used above what was estimated", line.Needed.Unit, used[line.ItemId], line.Needed);
            parts.Add(page.Compute(Operation.Product, "material-more", line.Description, Unit.Dollars, more, paid));
        }

        if (parts.Count == 0)
        {
            return null;
        }

        var all = Cents.Round(page, page.Sum("material-more", "Material used above what was estimated", Unit.Dollars, parts));
        var (material, tax) = (estimate.Bid.DirectCost.Single(l => l.Id == "material").Amount, estimate.Bid.DirectCost.SingleOrDefault(l => l.Id == "material-tax"));
        if (tax is null || material.Value == 0)
        {
            return all;
        }

        var share = page.Compute(Operation.Quotient, "material-tax", "Tax for each dollar of material", Unit.Factor, tax.Amount, material);
        return page.Sum("material-more", "Material used above what was estimated, with its tax", Unit.Dollars, [all, Cents.Round(page, page.Compute(Operation.Product, "material-tax", "Tax on it", Unit.Dollars, all, share))]);
    }
}
