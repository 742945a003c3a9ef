using System.Runtime.CompilerServices;
using Estimator.Engine.Explanations;
using Estimator.Engine.Purchase;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;

namespace Estimator.Web.Purchase;

/// <summary>What stays over of an item once the job is done: pieces of opened packs, ends of coils.</summary>
/// <param name="Left">How much.</param>
/// <param name="Source">What explains it.</param>
public sealed record Surplus(Fact Left, FigureSource Source)
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = FigurePages.Surplus;

    private static readonly ConditionalWeakTable<PricedJob, Dictionary<string, Surplus>> Known = [];

    /// <summary>The surplus of a line; null where nothing is bought.</summary>
    public static Surplus? Of(PricedJob priced, PurchaseLine line) => Known.GetValue(priced, Draw).GetValueOrDefault(line.ItemId);

    private static Dictionary<string, Surplus> Draw(PricedJob priced)
    {
        var page = new PageWriter(PageNumber);
        var cut = CableCut.Of(priced).ToDictionary(c => c.Plan.ItemId, StringComparer.Ordinal);
        var packs = priced.Estimate.Purchase.Lines.Where(l => (!l.Packs.IsEmpty || l.FromStock > 0) && !cut.ContainsKey(l.ItemId)).Select(l => (l.ItemId, Left: OfPacks(page, l))).ToList();
        var source = priced.Source.With(page.ToPage());
        var all = packs.ToDictionary(p => p.ItemId, p => new Surplus(p.Left, source), StringComparer.Ordinal);
        foreach (var (item, cable) in cut.Where(c => c.Value.Coils.Length > 0))
        {
            all[item] = new Surplus(cable.Sums.Left, cable.Source);
        }

        return all;
    }

    private static Fact OfPacks(PageWriter page, PurchaseLine line)
    {
        var unit = line.Needed.Unit;
        var bought = page.Sum("bought", "Bought", unit, [.. line.Packs.Select(p => page.Compute(
            Operation.Product, "bought", $"In packs of {p.Offer.PackSize}", unit,
            page.Row("offers.csv", $"{line.ItemId}.{p.Offer.Supplier}.{p.Offer.PackSize}.pack_size", "In a pack", p.Offer.PackSize, unit), page.Constant("Packs", p.Count, Unit.Each)))]);
        var there = line.FromStock > 0 ? page.Sum("there", "Bought or taken from the shelf", unit, [bought, page.Row(Citation.Shelf, line.ItemId, "From the shelf", line.FromStock, unit)]) : bought;
        return page.Compute(Operation.Difference, "left-over", "Bought less needed", unit, there, line.Needed);
    }
}
