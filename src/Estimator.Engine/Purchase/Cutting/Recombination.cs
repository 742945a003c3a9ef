namespace Estimator.Engine.Purchase.Cutting;

/// <summary>Improves a plan: takes a few stocks apart and cuts their pieces anew in the best of all ways, again and again.</summary>
/// <remarks>
/// Ruin and recreate, where the recreation is exact (<see cref="SubsetPartition"/>). Leftovers gather in few long ends, which in time frees whole stocks. Source of the idea: "Slack
/// Induction by String Removals for Vehicle Routing Problems", Transportation Science, 2020 (from memory), carried over to stocks.
/// </remarks>
internal sealed class Recombination
{
    private const int MostPieces = SubsetPartition.MostPieces;

    private readonly CuttingModel _model;
    private readonly StepMeter _meter;
    private readonly SubsetPartition _partition;
    private readonly List<Bin> _apart = [];
    private readonly int[] _items;
    private readonly int[] _counts;
    private readonly int[] _pieces = new int[MostPieces];
    private readonly int[] _chosen = new int[MostPieces];
    private DrawnNumbers _drawn;
    private int _bins;

    /// <summary>Starts from a plan. Stocks of limited number, and those with many pieces, stay as they are.</summary>
    internal Recombination(CuttingModel model, StepMeter meter, Bin[] bins, ulong seed)
    {
        (_model, _meter, _drawn) = (model, meter, new DrawnNumbers(model.Seed ^ seed));
        _partition = new SubsetPartition(model, meter);
        (_items, _counts) = (new int[(model.Pieces + 1) * MostPieces], new int[model.Pieces + 1]);
        foreach (var bin in bins)
        {
            if (model.Limited(bin.Stock) || bin.Items.Length >= MostPieces)
            {
                _apart.Add(bin);
            }
            else
            {
                bin.Items.CopyTo(Items(_bins));
                _counts[_bins++] = bin.Items.Length;
            }
        }
    }

    /// <summary>Tries so often; the plan never gets dearer.</summary>
    internal void Run(int tries)
    {
        for (var t = 0; t < tries && _bins > 1 && !_meter.Spent; t++)
        {
            Try();
        }
    }

    internal IEnumerable<Bin> Bins() => _apart.Concat(Enumerable.Range(0, _bins).Select(b =>
    {
        var items = Items(b)[.._counts[b]].ToArray();
        return new Bin(_model.CheapestFor(items.Sum(i => (long)_model.Lengths[i])), [.. items.Order()]);
    }));

    private Span<int> Items(int bin) => _items.AsSpan(bin * MostPieces, MostPieces);

    private void Try()
    {
        var (chosen, pieces, before) = (0, 0, 0L);
        for (var draw = 0; draw < MostPieces && chosen < _bins; draw++)
        {
            var bin = _drawn.Below(_bins);
            if (pieces + _counts[bin] <= MostPieces && _chosen.AsSpan(0, chosen).IndexOf(bin) < 0)
            {
                var items = Items(bin)[.._counts[bin]];
                items.CopyTo(_pieces.AsSpan(pieces));
                (_chosen[chosen++], pieces, before) = (bin, pieces + items.Length, before + Alone(items));
            }
        }

        _meter.Add(MostPieces);
        if (chosen < 2)
        {
            return;
        }

        // In another order equal divisions come out differently.
        for (var p = pieces - 1; p > 0; p--)
        {
            var other = _drawn.Below(p + 1);
            (_pieces[p], _pieces[other]) = (_pieces[other], _pieces[p]);
        }

        if (_partition.Divide(_pieces.AsSpan(0, pieces)) <= before)
        {
            Exchange(chosen, pieces);
        }
    }

    private long Alone(ReadOnlySpan<int> items)
    {
        var load = 0L;
        foreach (var item in items)
        {
            load += _model.Lengths[item];
        }

        return _partition.Alone(load);
    }

    private void Exchange(int chosen, int pieces)
    {
        Array.Sort(_chosen, 0, chosen);
        for (var c = chosen - 1; c >= 0; c--)
        {
            _bins--;
            Items(_bins).CopyTo(Items(_chosen[c]));
            _counts[_chosen[c]] = _counts[_bins];
        }

        for (var left = (1 << pieces) - 1; left > 0;)
        {
            var part = _partition.PartOf(left);
            var into = Items(_bins);
            left ^= part;
            _counts[_bins] = 0;
            for (var p = 0; p < pieces; p++)
            {
                if ((part >> p & 1) != 0)
                {
                    into[_counts[_bins]++] = _pieces[p];
                }
            }

            _bins++;
        }
    }
}
