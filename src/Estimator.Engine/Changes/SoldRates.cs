using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.Labor;
using Estimator.Engine.Purchase;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Changes;

/// <summary>What one of an item costs and how long it takes, as the two estimates have it on average.</summary>
/// <param name="before">What was agreed.</param>
/// <param name="after">What is asked for now.</param>
/// <param name="page">The page that the rates are read onto.</param>
internal sealed class SoldRates(JobEstimate before, JobEstimate after, PageWriter page)
{
    /// <summary>The phases in which an item is worked on, in order.</summary>
    internal IEnumerable<WorkPhase> Phases(string item) => after.Labor.Lines.Concat(before.Labor.Lines).Where(l => l.ItemId == item).Select(l => l.Phase).Distinct().Order();

    /// <summary>Hours of one that comes.</summary>
    internal Fact HoursToAdd(string item, WorkPhase phase) => Hours(after, item, phase) ?? Hours(before, item, phase) ?? Read(item, phase, 0);

    /// <summary>Hours of one that goes, as they were sold.</summary>
    internal Fact HoursSold(string item, WorkPhase phase) => Hours(before, item, phase) ?? Hours(after, item, phase) ?? Read(item, phase, 0);

    /// <summary>Price of one that comes; null where nobody offers it.</summary>
    internal Fact? PriceToAdd(string item) => Price(after, item) ?? Price(before, item);

    /// <summary>Price of one that goes, as it was sold; null where nobody offers it.</summary>
    internal Fact? PriceSold(string item) => Price(before, item) ?? Price(after, item);

    /// <summary>Whether an item is bought at all; holes and labels are not.</summary>
    internal bool Bought(string item) => after.Purchase.Lines.Concat(before.Purchase.Lines).Any(l => l.ItemId == item);

    private Fact? Hours(JobEstimate estimate, string item, WorkPhase phase)
    {
        List<LaborLine> lines = [.. estimate.Labor.Lines.Where(l => l.ItemId == item && l.Phase == phase)];
        var quantity = lines.Sum(l => l.Quantity.Value);
        return quantity == 0 ? null : Read(item, phase, lines.Sum(l => l.Hours.Value) / quantity);
    }

    private Fact Read(string item, WorkPhase phase, decimal hours) => page.Row("labor", $"{item}.{Words.Snake(phase)}", "Hours of one, as the estimate has them on average", hours, Unit.Hours);

    private Fact? Price(JobEstimate estimate, string item) =>
        estimate.Purchase.Lines.FirstOrDefault(l => l.ItemId == item && l.Cost is not null) is { Cost: { } cost } line && Units(line) is > 0 and var units
            ? page.Row("purchase", item, "Price of one, as bought", cost.Value.ToDollars() / units, Unit.Dollars)
            : null;

    private static decimal Units(PurchaseLine line) => line.Packs.Sum(p => p.Count * p.Offer.PackSize);
}
