using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Labor;
using Estimator.Engine.Purchase;
using Estimator.Engine.Rules;
using Estimator.Engine.Takeoff;

namespace Estimator.Engine.Pricing.Ranges;

/// <summary>Divides direct cost among the parts that may be off by themselves: material by what is bought, with its tax, labor by phase, each other line by its kind.</summary>
internal static class CostParts
{
    private const string Material = "material";
    private const string Labor = "labor";

    /// <summary>Dollars of each part that costs anything.</summary>
    internal static ImmutableSortedDictionary<string, Fact> Of(PageWriter page, ImmutableArray<BidLine> lines, TakeoffResult takeoff, PurchasePlan purchase, LaborPlan labor) => lines
        .Where(l => Head(l.Id) is not (Material or Labor)).Select(l => (Part: RangeRules.PartOfLine(l.Id), Dollars: l.Amount))
        .Concat(Divided(page, Of(page, lines, Material), purchase.Total, Bought(takeoff, purchase)))
        .Concat(Divided(page, Of(page, lines, Labor), labor.Total, labor.ByPhase.Select(p => (RangeRules.PartOfPhase(Words.Snake(p.Key)), p.Value))))
        .Where(p => p.Dollars.Value != 0).GroupBy(p => p.Part, StringComparer.Ordinal)
        .ToImmutableSortedDictionary(g => g.Key, g => page.Sum("range-part", "Part of direct cost", Unit.Dollars, [.. g.Select(p => p.Dollars)]), StringComparer.Ordinal);

    // Material and its tax are lines apart, and move as one.
    private static Fact Of(PageWriter page, ImmutableArray<BidLine> lines, string head) =>
        page.Sum("range-part", $"All of {head}", Unit.Dollars, [.. lines.Where(l => Head(l.Id) == head).Select(l => l.Amount)]);

    private static string Head(string line) => line.Split('-')[0];

    private static IEnumerable<(string Part, Fact Amount)> Bought(TakeoffResult takeoff, PurchasePlan purchase)
    {
        var categories = takeoff.Lines.GroupBy(l => l.ItemId, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First().Category, StringComparer.Ordinal);
        return purchase.Lines.Where(l => l.Cost is not null)
            .Select(l => (RangeRules.PartOf(categories.GetValueOrDefault(l.ItemId, "")), new Fact(l.Cost!.Value.Value.ToDollars(), Unit.Dollars, l.Cost.Value.Node)));
    }

    private static List<(string Part, Fact Dollars)> Divided(PageWriter page, Fact dollars, Fact whole, IEnumerable<(string Part, Fact Amount)> amounts)
    {
        if (whole.Value == 0)
        {
            return dollars.Value == 0 ? [] : [("other_cost", dollars)];
        }

        return [.. amounts.GroupBy(a => a.Part, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal).Select(g =>
        {
            var amount = page.Sum("range-part", "Of this part", whole.Unit, [.. g.Select(a => a.Amount)]);
            var share = page.Compute(Operation.Quotient, "range-part", "Its share", Unit.Factor, amount, whole);
            return (g.Key, page.Compute(Operation.Product, "range-part", "Its part of direct cost", Unit.Dollars, dollars, share));
        })];
    }
}
