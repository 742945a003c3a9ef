using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;
using Estimator.Engine.Takeoff;

namespace Estimator.Engine.Purchase.Suppliers;

/// <summary>What everything would cost at each supplier, each bought and cut as if there were no other.</summary>
/// <param name="Table">What each item costs where.</param>
/// <param name="Plans">The whole plan of each supplier, in the order of the table's terms.</param>
public sealed record SupplyPlans(SupplyTable Table, ImmutableArray<PurchasePlan> Plans)
{
    /// <summary>Buys at each supplier in turn.</summary>
    /// <param name="jobs">The jobs.</param>
    /// <param name="catalogue">The catalogue, with the offers that count.</param>
    /// <param name="stock">What is had already.</param>
    /// <param name="terms">The terms of suppliers; one without terms charges nothing.</param>
    public static SupplyPlans Of(IReadOnlyList<(string Job, TakeoffResult Takeoff)> jobs, PartsCatalogue catalogue, StockOnHand stock, IReadOnlyCollection<SupplierTerms> terms)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        var all = Buying.Together(jobs, catalogue, stock);
        var names = catalogue.Items.SelectMany(i => catalogue.OffersFor(i.Id)).Select(o => o.Supplier).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);
        ImmutableArray<SupplierTerms> known = [.. names.Select(n => terms.FirstOrDefault(t => t.Supplier == n) ?? SupplierTerms.None(n))];
        ImmutableArray<PurchasePlan> plans = [.. known.Select(t => Buying.Together(jobs, catalogue.WithOffers(o => o.Supplier == t.Supplier), stock))];

        // What the shelf covers is bought nowhere; what nobody can give stays, and is missing.
        ImmutableArray<string> items = [.. all.Lines.Where(l => !l.Packs.IsEmpty || l.Cost is null || TooLong(all, l.ItemId)).Select(l => l.ItemId)];
        return new SupplyPlans(new SupplyTable(items, known, [.. items.Select(i => plans.Select(p => CostOf(p, i)).ToImmutableArray())]), plans);
    }

    /// <summary>The catalogue in which each item of a choice is offered by its supplier alone.</summary>
    /// <param name="catalogue">The catalogue.</param>
    /// <param name="choice">The choice.</param>
    public PartsCatalogue Chosen(PartsCatalogue catalogue, SupplyChoice choice)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        ArgumentNullException.ThrowIfNull(choice);
        var owners = Table.Items.ToDictionary(i => i, choice.SupplierOf, StringComparer.Ordinal);
        return catalogue.WithOffers(o => !owners.TryGetValue(o.Item, out var owner) || owner == o.Supplier);
    }

    private static Money? CostOf(PurchasePlan plan, string item) => TooLong(plan, item) ? null : plan.Lines.First(l => l.ItemId == item).Cost?.Value;

    private static bool TooLong(PurchasePlan plan, string item) => plan.Cuts.Any(c => c.ItemId == item && !c.TooLong.IsEmpty);
}
