using Estimator.Engine.Catalogue;
using Estimator.Engine.House;

namespace Estimator.Engine.Purchase.Suppliers;

/// <summary>Whether an offer of a breaker may go into the panels of a job: a panel takes breakers that are listed for its make and series.</summary>
/// <remarks>NEC 110.3(B) holds listed equipment to its listing. The label on the panel's door decides; a make that nobody stated forbids no offer here.</remarks>
public static class BreakerFit
{
    /// <summary>Whether an offer fits every panel whose make is known. An offer that states no make fits all.</summary>
    /// <param name="offer">The offer.</param>
    /// <param name="panels">The panels of all jobs that are bought for together.</param>
    public static bool Fits(Offer offer, IEnumerable<Panel> panels)
    {
        ArgumentNullException.ThrowIfNull(offer);
        return offer.Make.Length == 0 || panels.All(p => p.Make is null || (Same(offer.Make, p.Make) && (p.Series is null || offer.Series.Length == 0 || Same(offer.Series, p.Series))));
    }

    /// <summary>What must be settled before breakers of a plan are ordered, in words.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="panels">The panels, each with the name of its job.</param>
    public static IEnumerable<string> ToSettle(PurchasePlan plan, IReadOnlyCollection<(string Job, Panel Panel)> panels)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var unknown = panels.Where(p => p.Panel.Make is null).Select(p => $"{p.Job}, {(p.Panel.Name.Length > 0 ? p.Panel.Name : p.Panel.Id)}").ToList();
        return unknown.Count == 0 ? [] : plan.Lines.SelectMany(l => l.Packs.Where(p => p.Offer.Make.Length > 0).Select(p => (l.Description, p.Offer))).Select(x =>
            $"{x.Description} of {x.Offer.Supplier} is listed for {x.Offer.Make}{(x.Offer.Series.Length > 0 ? $" {x.Offer.Series}" : "")}, and the make of {string.Join(" and ", unknown)} is not stated: read the label on its door first.");
    }

    private static bool Same(string a, string b) => a.Trim().Equals(b.Trim(), StringComparison.OrdinalIgnoreCase);
}
