namespace Estimator.Engine.Purchase.Cutting;

/// <summary>Lists the sets of stocks that cost less than a plan and that no <see cref="RoomRule"/> refutes.</summary>
internal sealed class StockSets
{
    private const int MostSets = 3_000;
    private const int MostRulesOnTheWay = 12;

    private readonly CuttingModel _model;
    private readonly StepMeter _meter;
    private readonly RoomRule[] _rules;
    private readonly int[] _order;
    private readonly int[] _count;
    private readonly long[][] _room;
    private readonly int[][] _best;
    private readonly List<(long Price, int[] Count)> _sets = [];
    private long _below;
    private bool _overfull;

    internal StockSets(CuttingModel model, StepMeter meter, IEnumerable<RoomRule> rules)
    {
        (_model, _meter, _rules) = (model, meter, [.. rules]);
        _count = new int[model.StockLengths.Length];
        for (var k = 0; k < _count.Length; k++)
        {
            // What costs nothing is in every set.
            _count[k] = model.StockPrices[k] == 0 ? model.StockLimits[k] : 0;
        }

        _order = [.. Enumerable.Range(0, _count.Length).Where(k => model.StockPrices[k] > 0).OrderByDescending(k => model.StockLengths[k])];
        _room = [.. Enumerable.Range(0, _order.Length + 1).Select(_ => new long[_rules.Length])];
        for (var r = 0; r < _rules.Length; r++)
        {
            _room[0][r] = Enumerable.Range(0, _count.Length).Sum(k => _count[k] * _rules[r].Room[k]);
        }

        _best = [.. _rules.Take(MostRulesOnTheWay).Select(BestFrom)];
    }

    /// <summary>The sets from the cheapest up; null where there are too many.</summary>
    /// <param name="below">They cost less than this.</param>
    internal List<(long Price, int[] Count)>? Below(long below)
    {
        _sets.Clear();
        (_below, _overfull) = (below, false);
        Choose(0, 0);
        return _overfull ? null : [.. _sets.OrderBy(s => s.Price)];
    }

    private void Choose(int at, long price)
    {
        _meter.Add(2L * _rules.Length);
        if (_overfull || _sets.Count >= MostSets || _meter.Spent)
        {
            _overfull = true;
            return;
        }

        if (at == _order.Length)
        {
            for (var r = 0; r < _rules.Length; r++)
            {
                if (_room[at][r] < _rules[r].Needed)
                {
                    return;
                }
            }

            _sets.Add((price, [.. _count]));
            return;
        }

        if (!CanBeMet(at, price))
        {
            return;
        }

        var k = _order[at];
        _room[at].CopyTo(_room[at + 1], 0);
        for (var n = 0; n <= _model.StockLimits[k] && price < _below; n++)
        {
            _count[k] = n;
            Choose(at + 1, price);
            price += _model.StockPrices[k];
            for (var r = 0; r < _rules.Length; r++)
            {
                _room[at + 1][r] += _rules[r].Room[k];
            }
        }

        _count[k] = 0;
    }

    // Whether the money that is left buys enough room at the best rate.
    private bool CanBeMet(int at, long price)
    {
        for (var r = 0; r < _best.Length; r++)
        {
            var k = _best[r][at];
            var lacking = _rules[r].Needed - _room[at][r];
            if (lacking > 0 && (Int128)lacking * _model.StockPrices[k] > (Int128)(_below - 1 - price) * _rules[r].Room[k])
            {
                return false;
            }
        }

        return true;
    }

    // For each place in the order the stock, from there on, with the most room for its price.
    private int[] BestFrom(RoomRule rule)
    {
        var best = new int[_order.Length];
        for (var at = _order.Length - 1; at >= 0; at--)
        {
            var k = _order[at];
            var other = at + 1 < _order.Length ? best[at + 1] : k;
            best[at] = (Int128)rule.Room[k] * _model.StockPrices[other] >= (Int128)rule.Room[other] * _model.StockPrices[k] ? k : other;
        }

        return best;
    }
}
