using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase.Suppliers;

/// <summary>Finds the cheapest owner of each item where orders have delivery charges and minimums.</summary>
/// <remarks>
/// For every set of suppliers, cheapest bound first: each item goes where it costs least, then single moves as long as one helps, then branch and bound over the items whose costs differ most. The bound
/// of a node adds for each supplier what it takes at least to reach its minimum or its free delivery, as a knapsack whose last item may be cut (Dantzig 1957, "Discrete-variable extremum
/// problems", Operations Research 5(2)). Sets whose search is cut off leave their bound, which is printed. Works on whole ten-thousandths of a dollar.
/// </remarks>
internal sealed class SupplySearch
{
    /// <summary>Most suppliers of which every set is looked at; beyond, those that are cheapest for some item, most items first.</summary>
    internal const int MostSuppliers = 10;

    private const int NodesPerSet = 20_000;
    private const int NodesInAll = 400_000;
    private const decimal PerDollar = 10_000m;

    private readonly SupplyTable _table;
    private readonly long?[][] _costs;
    private int _nodes;
    private int[] _best = [];
    private long _bestCost = long.MaxValue;

    internal SupplySearch(SupplyTable table)
    {
        _table = table;
        _costs = [.. table.Costs.Select(row => row.Select(c => c is { } cost ? (long?)ToUnits(cost) : null).ToArray())];
    }

    /// <summary>The owner of each item, and what no way costs less than.</summary>
    internal (int[] Owners, Money Bound) Best()
    {
        if (_costs.Length == 0)
        {
            return ([], Money.Zero);
        }

        var suppliers = Candidates(out var leftOut);
        var sets = Enumerable.Range(1, (1 << suppliers.Length) - 1)
            .Select(bits => suppliers.Where((_, at) => (bits & (1 << at)) != 0).ToImmutableArray())
            .Where(set => _costs.All(row => set.Any(s => row[s] is not null)))
            .Select(set => (Set: set, Search: new SetSearch(_table.Terms, _costs, set)))
            .OrderBy(x => x.Search.Bound).ThenBy(x => x.Set.Length).ToList();
        var bound = Bare;
        if (sets.Count == 0)
        {
            return ([.. _costs.Select(row => Array.IndexOf(row, row.Min()))], ToMoney(bound));
        }

        var open = long.MaxValue;
        foreach (var (_, search) in sets)
        {
            if (search.Bound >= _bestCost)
            {
                break;
            }

            var (owners, cost, done) = search.Run(_bestCost, Math.Min(NodesPerSet, NodesInAll - _nodes));
            _nodes += search.Nodes;
            if (cost < _bestCost)
            {
                (_best, _bestCost) = (owners, cost);
            }

            open = done ? open : Math.Min(open, search.Bound);
        }

        return (_best, ToMoney(leftOut ? bound : Math.Min(_bestCost, open)));
    }

    // Every item where it is cheapest, and nothing charged: what holds where suppliers were left out.
    private long Bare => _costs.Sum(row => row.Min()!.Value);

    private ImmutableArray<int> Candidates(out bool leftOut)
    {
        ImmutableArray<int> all = [.. Enumerable.Range(0, _table.Terms.Length).Where(s => _costs.Any(row => row[s] is not null))];
        leftOut = all.Length > MostSuppliers;
        if (!leftOut)
        {
            return all;
        }

        // Whoever alone has an item must be among them; then whoever is cheapest for most.
        return [.. all.OrderByDescending(s => _costs.Count(row => row[s] is not null && row.Count(c => c is not null) == 1)).ThenByDescending(s => _costs.Count(row => row[s] == row.Min())).ThenBy(s => s).Take(MostSuppliers).Order()];
    }

    internal static long ToUnits(Money money) => decimal.ToInt64(decimal.Round(money.ToDollars() * PerDollar, 0, MidpointRounding.AwayFromZero));

    private static Money ToMoney(long units) => Money.FromDollars(units / PerDollar);
}
