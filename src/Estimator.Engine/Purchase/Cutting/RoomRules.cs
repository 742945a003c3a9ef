namespace Estimator.Engine.Purchase.Cutting;

/// <summary>The conditions known so far, and the best lower bound that follows from them.</summary>
internal sealed class RoomRules(CuttingModel model, BoundedKnapsack knapsack, PriceCover cover)
{
    private readonly List<RoomRule> _rules = [];
    private readonly long[] _worth = new long[model.Lengths.Length];

    internal IReadOnlyList<RoomRule> All => _rules;

    /// <summary>No plan costs less.</summary>
    internal long LowerBound { get; private set; }

    /// <summary>Weighs by length and by number, of all pieces and of those from each length up, and so that small pieces count nothing and large ones fill a stock.</summary>
    /// <param name="limit">Price of a plan: no higher bound is looked for.</param>
    internal void AddUsual(long limit)
    {
        var m = model.Lengths.Length;
        Add([.. model.Lengths], limit, overLength: true);
        for (var t = 0; t < m && LowerBound < limit; t++)
        {
            Keep(new RoomRule([.. model.StockLengths.Select(l => Fitting(l, t))], model.Demands.Take(t + 1).Sum(d => (long)d)), limit);
        }

        for (var t = 0; t < m && LowerBound < limit; t++)
        {
            var least = model.Lengths[t];
            if (model.Longest - least > least)
            {
                continue;
            }

            // Pieces that leave no room for the shortest that counts weigh a whole stock.
            Array.Clear(_worth);
            for (var i = 0; i < m; i++)
            {
                _worth[i] = model.Lengths[i] >= least ? model.Longest : model.Longest - least <= model.Lengths[i] ? model.Lengths[i] : 0;
            }

            Add(_worth, limit, overLength: false);
        }
    }

    /// <summary>Weighs pieces in a given way.</summary>
    /// <param name="weights">Weight of a piece of each item, not below zero.</param>
    /// <param name="limit">Price of a plan.</param>
    /// <param name="overLength">Whether the weights are lengths, of which a stock holds no more than its own.</param>
    internal void Add(ReadOnlySpan<long> weights, long limit, bool overLength = false)
    {
        knapsack.Solve(weights, model.Demands, within: false);
        var room = new long[model.StockLengths.Length];
        var needed = 0L;
        for (var k = 0; k < room.Length; k++)
        {
            room[k] = overLength ? Math.Min(knapsack.ValueOf(k), model.StockLengths[k]) : knapsack.ValueOf(k);
        }

        for (var i = 0; i < weights.Length; i++)
        {
            needed += weights[i] * model.Demands[i];
        }

        Keep(new RoomRule(room, needed), limit);
    }

    /// <summary>Takes a bound that was proven in another way.</summary>
    internal void Raise(long bound) => LowerBound = Math.Max(LowerBound, bound);

    private void Keep(RoomRule rule, long limit)
    {
        _rules.Add(rule);
        Raise(cover.LeastPrice(rule, limit));
    }

    // How many pieces at least as long as an item fit into a stock: the shortest of them first.
    private long Fitting(int stock, int item)
    {
        var (count, left) = (0L, (long)stock);
        for (var i = item; i >= 0 && left >= model.Lengths[i]; i--)
        {
            var fit = Math.Min(model.Demands[i], left / model.Lengths[i]);
            (count, left) = (count + fit, left - (fit * model.Lengths[i]));
            if (fit < model.Demands[i])
            {
                break;
            }
        }

        return count;
    }
}
