using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Takeoff;

/// <summary>What is bought of a category beyond the takeoff, because pieces break, go missing or come wrong.</summary>
/// <remarks>
/// The percent is taken on the category as a whole, which is rounded up to whole pieces once it comes to half of one; each item gets its own whole pieces, and what is left goes to the
/// items that lost most by that, the one with most pieces first. An item by itself is not rounded up: twelve kinds of one device each would buy twelve spare for a few percent. Pieces that the
/// owner brings are the owner's. Cable has its cut tolerance instead. Source: common practice, no source.
/// </remarks>
internal sealed class Spares(Practice practice, PartsCatalogue catalogue, PageWriter page)
{
    /// <summary>The lines with their spare pieces.</summary>
    internal ImmutableArray<TakeoffLine> Over(ImmutableArray<TakeoffLine> lines)
    {
        var spare = lines.Where(l => !l.OwnerSupplied && catalogue.Find(l.ItemId) is { IsBought: true } && practice.SparePercents.ContainsKey(l.Category))
            .GroupBy(l => (l.Category, l.Quantity.Unit)).SelectMany(g => Of(g.Key.Category, [.. g])).ToDictionary(s => s.Item, s => s.Spare, StringComparer.Ordinal);
        return spare.Count == 0 ? lines : [.. lines.Select(l => !l.OwnerSupplied && spare.TryGetValue(l.ItemId, out var more) ? l with { Spare = more } : l)];
    }

    private List<(string Item, Fact Spare)> Of(string category, ImmutableArray<TakeoffLine> lines)
    {
        var unit = lines[0].Quantity.Unit;
        var percent = page.Given($"$.practice.spare_percents.{category}", "Bought beyond the takeoff", practice.SparePercents[category].ToHundredths(), Unit.Percent);
        var shares = lines.Select(l => page.Compute(Operation.PercentOf, "spare-share", l.Description, unit, l.Quantity, percent)).ToArray();
        var all = page.Sum("spare-category", "Beyond the takeoff, all of the category", unit, shares);
        if (all.Value < PracticeDefaults.SpareFrom.Number())
        {
            return [];
        }

        var whole = page.Constant("Whole pieces", 1, unit);
        var left = decimal.Ceiling(all.Value) - shares.Sum(s => decimal.Floor(s.Value));
        var up = Enumerable.Range(0, lines.Length).Where(i => shares[i].Value > decimal.Floor(shares[i].Value)).OrderByDescending(i => shares[i].Value - decimal.Floor(shares[i].Value))
            .ThenByDescending(i => lines[i].Quantity.Value).ThenBy(i => lines[i].ItemId, StringComparer.Ordinal).Take((int)left).ToHashSet();
        return
        [
            .. Enumerable.Range(0, lines.Length).Select(i => (lines[i].ItemId, Spare: page.Compute(
            Operation.Because, "spare", "Spare", unit, page.Compute(up.Contains(i) ? Operation.RoundUp : Operation.RoundDown, "spare-whole", "Spare, in whole pieces", unit, shares[i], whole), all)))
                .Where(s => s.Spare.Value > 0),
        ];
    }
}
