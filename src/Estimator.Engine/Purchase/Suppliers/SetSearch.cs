using System.Collections.Immutable;

namespace Estimator.Engine.Purchase.Suppliers;

/// <summary>Finds the cheapest owners where every supplier of one set gets an order, empty or not.</summary>
internal sealed class SetSearch
{
    private readonly ImmutableArray<OrderCost> _orders;
    private readonly long[][] _costs;
    private readonly int[] _least;
    private readonly int[] _byWeight;
    private readonly int[][] _byRatio;
    private readonly int[] _place;
    private readonly ImmutableArray<int> _set;
    private readonly long _floor;
    private int[] _best;
    private long _bestCost;
    private int _left;

    /// <summary>Prepares the search; <see cref="long.MaxValue"/> stands for what a supplier does not have.</summary>
    internal SetSearch(ImmutableArray<SupplierTerms> terms, long?[][] costs, ImmutableArray<int> set)
    {
        _set = set;
        _orders = [.. set.Select(s => OrderCost.Of(terms[s]))];
        _costs = [.. costs.Select(row => set.Select(s => row[s] ?? long.MaxValue).ToArray())];
        _least = [.. _costs.Select(row => Array.IndexOf(row, row.Min()))];
        var items = Enumerable.Range(0, _costs.Length).ToList();
        _byWeight = [.. items.OrderByDescending(i => _costs[i].Where(c => c < long.MaxValue).Max() - _costs[i][_least[i]]).ThenByDescending(i => _costs[i][_least[i]])];
        _place = new int[_costs.Length];
        for (var at = 0; at < _byWeight.Length; at++)
        {
            _place[_byWeight[at]] = at;
        }

        _byRatio = [.. set.Select((_, s) => items.Where(i => _costs[i][s] is > 0 and < long.MaxValue && _least[i] != s)
            .OrderBy(i => (decimal)(_costs[i][s] - _costs[i][_least[i]]) / _costs[i][s]).ThenBy(i => i).ToArray())];
        _best = [.. _least];
        _bestCost = Cost(_best);
        _floor = _orders.Sum(o => o.Floor);
        Bound = BoundOf(0, Sums(_least), _costs.Select((row, i) => row[_least[i]]).Sum());
    }

    /// <summary>No way costs less than this.</summary>
    internal long Bound { get; }

    /// <summary>How many nodes were looked at.</summary>
    internal int Nodes { get; private set; }

    /// <summary>The owners as numbers of suppliers, their cost, and whether that is proven to be the least, or not below what is known already.</summary>
    internal (int[] Owners, long Cost, bool Done) Run(long known, int nodes)
    {
        Improve();
        _left = nodes;
        var owners = (int[])_least.Clone();
        var done = _bestCost <= Bound || Branch(0, owners, Sums(_least), _costs.Select((row, i) => row[_least[i]]).Sum(), known);
        Nodes = nodes - _left;
        return ([.. _best.Select(s => _set[s])], _bestCost, done);
    }

    // Items at the places before depth are decided; the others stand where they cost least.
    private bool Branch(int depth, int[] owners, long[] sums, long goods, long known)
    {
        if (BoundOf(depth, sums, goods) >= Math.Min(known, _bestCost))
        {
            return true;
        }

        if (--_left < 0)
        {
            return false;
        }

        var cost = goods + sums.Select((sum, s) => _orders[s].Extra(sum)).Sum();
        if (cost < _bestCost)
        {
            (_best, _bestCost) = ((int[])owners.Clone(), cost);
        }

        if (depth == _byWeight.Length)
        {
            return true;
        }

        var item = _byWeight[depth];
        var (row, least, done) = (_costs[item], _least[item], true);
        foreach (var s in Enumerable.Range(0, row.Length).Where(s => row[s] < long.MaxValue).OrderBy(s => row[s]).ThenBy(s => s))
        {
            Move(item, least, s, owners, sums);
            done &= Branch(depth + 1, owners, sums, goods - row[least] + row[s], known);
            Move(item, s, least, owners, sums);
        }

        return done;
    }

    private void Move(int item, int from, int to, int[] owners, long[] sums)
    {
        sums[from] -= _costs[item][from];
        sums[to] += _costs[item][to];
        owners[item] = to;
    }

    private long BoundOf(int depth, long[] sums, long goods)
    {
        for (var s = 0; s < sums.Length; s++)
        {
            goods += AtLeast(s, depth, sums[s]);
        }

        return Math.Max(goods, _floor);
    }

    // What the order of a supplier adds at least: its charges as it stands, or what it takes to bring further goods to it.
    private long AtLeast(int s, int depth, long sum)
    {
        var order = _orders[s];
        var extra = order.Extra(sum);
        if (extra == 0)
        {
            return 0;
        }

        foreach (var goal in order.Goals.Where(g => g > sum))
        {
            extra = Math.Min(extra, Bring(s, depth, sum, goal));
        }

        return extra;
    }

    // Moves the items that cost least more for each dollar that they bring, the last of them in part; what can't be brought counts as filling up, which costs no less a dollar.
    private long Bring(int s, int depth, long sum, long goal)
    {
        var (missing, paid) = (goal - sum, 0L);
        foreach (var item in _byRatio[s])
        {
            if (_place[item] < depth)
            {
                continue;
            }

            var (brings, more) = (_costs[item][s], _costs[item][s] - _costs[item][_least[item]]);
            if (brings >= missing)
            {
                return paid + (long)((Int128)more * missing / brings) + _orders[s].Charge(goal);
            }

            (missing, paid) = (missing - brings, paid + more);
        }

        return goal == _orders[s].Minimum ? paid + _orders[s].Extra(goal - missing) : long.MaxValue;
    }

    // Single moves, as long as one helps.
    private void Improve()
    {
        var (owners, sums) = ((int[])_best.Clone(), Sums(_best));
        for (var better = true; better;)
        {
            better = false;
            for (var i = 0; i < owners.Length; i++)
            {
                for (var s = 0; s < sums.Length; s++)
                {
                    better |= TryMove(i, s, owners, sums);
                }
            }
        }

        (_best, _bestCost) = (owners, Cost(owners));
    }

    private bool TryMove(int item, int to, int[] owners, long[] sums)
    {
        var from = owners[item];
        if (from == to || _costs[item][to] == long.MaxValue)
        {
            return false;
        }

        var (old, now) = (_costs[item][from], _costs[item][to]);
        var change = now - old + _orders[from].Extra(sums[from] - old) - _orders[from].Extra(sums[from]) + _orders[to].Extra(sums[to] + now) - _orders[to].Extra(sums[to]);
        if (change < 0)
        {
            Move(item, from, to, owners, sums);
        }

        return change < 0;
    }

    private long[] Sums(int[] owners)
    {
        var sums = new long[_set.Length];
        for (var i = 0; i < owners.Length; i++)
        {
            sums[owners[i]] += _costs[i][owners[i]];
        }

        return sums;
    }

    private long Cost(int[] owners) => Sums(owners).Select((sum, s) => sum + _orders[s].Extra(sum)).Sum();
}
