using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase.Suppliers;

/// <summary>Divides what is bought among suppliers. An item comes from one supplier.</summary>
/// <remarks>
/// An order costs its goods, what fills it up to the supplier's minimum, and the delivery, which is free from some amount on. So no order is refused, and the shortfall of a small one counts as money
/// spent. The best way is sought for every set of suppliers (<see cref="SupplySearch"/>).
/// </remarks>
public static class SupplyChoosing
{
    private const int Hundred = 100;

    /// <summary>All from one supplier: each in turn, fewest missing items first, then by cost.</summary>
    /// <param name="table">What each item costs where.</param>
    public static ImmutableArray<SupplyChoice> Single(SupplyTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        return
        [
            .. table.Terms.Select((terms, s) =>
            {
                var missing = table.Items.Where((_, i) => table.Costs[i][s] is null).ToImmutableArray();
                var choice = Choice(table, [.. table.Items.Select((_, i) => table.Costs[i][s] is null ? -1 : s)], missing);
                return choice with { LowerBound = choice.Total };
            }).OrderBy(c => c.Missing.Length).ThenBy(c => c.Total),
        ];
    }

    /// <summary>The cheapest way over any number of suppliers that gets all that anybody has.</summary>
    /// <param name="table">What each item costs where.</param>
    public static SupplyChoice Split(SupplyTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var missing = table.NobodyHas;
        var (owners, bound) = new SupplySearch(table.Where(i => table.Costs[i].Any(c => c is not null))).Best();
        var next = 0;
        int[] all = [.. table.Costs.Select(c => c.All(x => x is null) ? -1 : owners[next++])];
        var choice = Choice(table, all, missing);
        return choice with { LowerBound = bound < choice.Total ? bound : choice.Total };
    }

    /// <summary>The cheapest way that buys from a preferred supplier whatever costs there at most a percentage more than at the cheapest.</summary>
    /// <param name="table">What each item costs where.</param>
    /// <param name="supplier">The preferred supplier.</param>
    /// <param name="within">How much more its goods may cost, item by item.</param>
    public static SupplyChoice Preferred(SupplyTable table, string supplier, Percent within)
    {
        ArgumentNullException.ThrowIfNull(table);
        var preferred = table.Terms.Select(t => t.Supplier).ToImmutableArray().IndexOf(supplier);
        if (preferred < 0)
        {
            return Split(table);
        }

        bool Stays(ImmutableArray<Money?> costs) => costs[preferred] is { } cost && cost * Hundred <= costs.Where(c => c is not null).Min()!.Value * (Hundred + within.ToHundredths());
        return Split(table with { Costs = [.. table.Costs.Select(c => Stays(c) ? [.. c.Select((cost, s) => s == preferred ? cost : null)] : c)] });
    }

    private static SupplyChoice Choice(SupplyTable table, int[] owners, ImmutableArray<string> missing)
    {
        var orders = table.Terms.Select((terms, s) =>
        {
            int[] mine = [.. Enumerable.Range(0, owners.Length).Where(i => owners[i] == s)];
            var goods = mine.Aggregate(Money.Zero, (sum, i) => sum + table.Costs[i][s]!.Value);
            return new SupplierOrder(terms.Supplier, [.. mine.Select(i => table.Items[i])], goods, terms.FillUp(goods), terms.DeliveryOf(goods));
        }).Where(o => !o.Items.IsEmpty);
        return new SupplyChoice([.. orders], missing, Money.Zero);
    }
}
