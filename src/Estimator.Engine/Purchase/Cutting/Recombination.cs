namespace Estimator.Engine.Purchase.Cutting;

/// <summary>Improves a plan: takes a few stocks apart and cuts their pieces anew in the best of all ways, again and again.</summary>
/// <remarks>
/// Ruin and recreate, where the recreation is exact: dynamic programming over the subsets of at most ten pieces. Of equal prices it prefers leftovers in few long ends, which in time
/// frees whole stocks. Source of the idea: "Slack Induction by String Removals for Vehicle Routing Problems", Transportation Science, 2020 (from memory), carried over to stocks.
/// </remarks>
internal sealed class Recombination
{
    private const int MostPieces = 10;
    private const int PriceShift = 28;
    private const int SlackBits = 12;

    private readonly CuttingModel _model;
    private readonly StepMeter _meter;
    private readonly List<Bin> _apart = [];
    private readonly List<int[]> _bins = [];
    private readonly int[] _stockOf;
    private readonly int[] _pieces = new int[MostPieces];
    private readonly int[] _chosen = new int[MostPieces];
    private readonly long[] _load = new long[1 << MostPieces];
    private readonly long[] _alone = new long[1 << MostPieces];
    private readonly long[] _best = new long[1 << MostPieces];
    private readonly int[] _part = new int[1 << MostPieces];
    private readonly int _slackShift;
    private DrawnNumbers _drawn;

    internal Recombination(CuttingModel model, StepMeter meter, Bin[] bins, ulong seed)
    {
        (_model, _meter, _drawn) = (model, meter, new DrawnNumbers(model.Seed ^ seed));
        while (model.Longest >> _slackShift >= 1 << SlackBits)
        {
            _slackShift++;
        }

        foreach (var bin in bins)
        {
            if (model.Limited(bin.Stock) || bin.Items.Length > MostPieces - 1)
            {
                _apart.Add(bin);
            }
            else
            {
                _bins.Add(bin.Items);
            }
        }

        _stockOf = [.. Enumerable.Range(0, model.StockLengths.Length).Where(k => !model.Limited(k))];
    }

    /// <summary>Tries so often; the plan never gets dearer.</summary>
    internal void Run(int tries)
    {
        for (var t = 0; t < tries && _bins.Count > 1 && !_meter.Spent; t++)
        {
            Try();
        }
    }

    internal IEnumerable<Bin> Bins() => _apart.Concat(_bins.Select(b => new Bin(_model.CheapestFor(b.Sum(i => (long)_model.Lengths[i])), [.. b.Order()])));

    private void Try()
    {
        var (chosen, pieces) = (0, 0);
        for (var draw = 0; draw < MostPieces && chosen < _bins.Count; draw++)
        {
            var bin = _drawn.Below(_bins.Count);
            if (pieces + _bins[bin].Length <= MostPieces && _chosen.AsSpan(0, chosen).IndexOf(bin) < 0)
            {
                _bins[bin].CopyTo(_pieces.AsSpan(pieces));
                (_chosen[chosen++], pieces) = (bin, pieces + _bins[bin].Length);
            }
        }

        if (chosen < 2)
        {
            _meter.Add(MostPieces);
            return;
        }

        for (var p = pieces - 1; p > 0; p--)
        {
            var other = _drawn.Below(p + 1);
            (_pieces[p], _pieces[other]) = (_pieces[other], _pieces[p]);
        }

        Divide(pieces);
        var before = 0L;
        for (var c = 0; c < chosen; c++)
        {
            before += Alone(_bins[_chosen[c]].Sum(i => (long)_model.Lengths[i]));
        }

        if (_best[(1 << pieces) - 1] <= before)
        {
            Exchange(chosen, pieces);
        }
    }

    private void Divide(int pieces)
    {
        var all = 1 << pieces;
        _load[0] = 0;
        unchecked
        {
            for (var set = 1; set < all; set++)
            {
                _load[set] = _load[set & (set - 1)] + _model.Lengths[_pieces[System.Numerics.BitOperations.TrailingZeroCount(set)]];
                _alone[set] = Alone(_load[set]);
            }

            var (alone, best) = (_alone, _best);
            for (var set = 1; set < all; set++)
            {
                var low = set & -set;
                var rest = set ^ low;
                var (least, part) = (alone[set], set);
                for (var with = (rest - 1) & rest; with != rest; with = (with - 1) & rest)
                {
                    var cost = alone[with | low] + best[rest ^ with];
                    if (cost < least)
                    {
                        (least, part) = (cost, with | low);
                    }

                    if (with == 0)
                    {
                        break;
                    }
                }

                (best[set], _part[set]) = (least, part);
            }
        }

        var steps = 1L;
        for (var p = 0; p < pieces; p++)
        {
            steps *= 3;
        }

        _meter.Add(steps);
    }

    private void Exchange(int chosen, int pieces)
    {
        Array.Sort(_chosen, 0, chosen);
        for (var c = chosen - 1; c >= 0; c--)
        {
            _bins[_chosen[c]] = _bins[^1];
            _bins.RemoveAt(_bins.Count - 1);
        }

        for (var left = (1 << pieces) - 1; left > 0; left ^= _part[left])
        {
            var part = _part[left];
            var items = new int[System.Numerics.BitOperations.PopCount((uint)part)];
            for (var (p, n) = (0, 0); p < pieces; p++)
            {
                if ((part >> p & 1) != 0)
                {
                    items[n++] = _pieces[p];
                }
            }

            _bins.Add(items);
        }
    }

    // Price first, then the square of what is left, the more the better. The greatest number where nothing that can be bought is long enough.
    private long Alone(long load)
    {
        var (price, length) = (long.MaxValue, 0);
        foreach (var k in _stockOf)
        {
            if (_model.StockLengths[k] >= load && _model.StockPrices[k] < price)
            {
                (price, length) = (_model.StockPrices[k], _model.StockLengths[k]);
            }
        }

        if (price == long.MaxValue)
        {
            return long.MaxValue / (2 * MostPieces);
        }

        var slack = (length - load) >> _slackShift;
        return (price << PriceShift) - (slack * slack);
    }
}
