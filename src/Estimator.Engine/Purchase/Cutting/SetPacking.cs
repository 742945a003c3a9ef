namespace Estimator.Engine.Purchase.Cutting;

/// <summary>Tells whether the pieces can be cut from a given set of stocks.</summary>
/// <remarks>Best fit first; then each stock as full as possible, the smallest first (minimum bin slack); then a search of all ways, longest piece first, up to a number of steps.</remarks>
internal sealed class SetPacking(CuttingModel model, StepMeter meter)
{
    private const int MostSteps = 60_000;
    private const int MostPieces = 500;

    private readonly int[] _piece = [.. Enumerable.Range(0, model.Lengths.Length).SelectMany(i => Enumerable.Repeat(i, model.Demands[i]))];
    private readonly int[] _binOf = new int[model.Pieces];
    private readonly BinFilling _filling = new(model, meter);
    private SuffixSums? _sums;
    private int[] _stock = [];
    private long[] _left = [];
    private int _bins;
    private long _slack;
    private int _steps;

    /// <summary>True and the bins where they can; false where that is refuted; null where it stays open.</summary>
    internal bool? Pack(ReadOnlySpan<int> countOfStock, out Bin[] bins)
    {
        bins = [];
        Prepare(countOfStock);
        if (_slack < 0)
        {
            return false;
        }

        if (FitsBest() || Fills(fromFirst: true) || Fills(fromFirst: false))
        {
            bins = Bins();
            return true;
        }

        if (_piece.Length > MostPieces)
        {
            return null;
        }

        _sums ??= new SuffixSums([.. _piece.Select(i => model.Lengths[i])], model.Longest);
        Prepare(countOfStock);
        _steps = 0;
        var found = Place(0, 0);
        meter.Add(4L * _steps * _bins);
        if (found)
        {
            bins = Bins();
            return true;
        }

        return _steps > MostSteps ? null : false;
    }

    private void Prepare(ReadOnlySpan<int> countOfStock)
    {
        _bins = 0;
        foreach (var count in countOfStock)
        {
            _bins += count;
        }

        if (_stock.Length < _bins)
        {
            (_stock, _left) = (new int[2 * _bins], new long[2 * _bins]);
        }

        _slack = -model.Total;
        for (var (k, b) = (0, 0); k < countOfStock.Length; k++)
        {
            for (var n = 0; n < countOfStock[k]; n++)
            {
                (_stock[b], _left[b]) = (k, model.StockLengths[k]);
                _slack += _left[b++];
            }
        }
    }

    private Bin[] Bins() => [.. Enumerable.Range(0, _bins).Select(b => new Bin(_stock[b], [.. Enumerable.Range(0, _piece.Length).Where(p => _binOf[p] == b).Select(p => _piece[p])]))];

    private bool Fills(bool fromFirst) => _filling.Fill(_stock.AsSpan(0, _bins), _slack, fromFirst, _binOf);

    private bool FitsBest()
    {
        meter.Add((long)_piece.Length * _bins);
        for (var p = 0; p < _piece.Length; p++)
        {
            var best = -1;
            for (var b = 0; b < _bins; b++)
            {
                if (_left[b] >= model.Lengths[_piece[p]] && (best < 0 || _left[b] < _left[best]))
                {
                    best = b;
                }
            }

            if (best < 0)
            {
                return false;
            }

            _left[best] -= model.Lengths[_piece[p]];
            _binOf[p] = best;
        }

        return true;
    }

    private bool Place(int piece, int from)
    {
        if (piece == _piece.Length)
        {
            return true;
        }

        if (++_steps > MostSteps)
        {
            return false;
        }

        var length = model.Lengths[_piece[piece]];
        if (Lost(piece) > _slack)
        {
            return false;
        }

        // Equal pieces go to stocks in order, and of stocks with as much left one is enough.
        var start = piece > 0 && _piece[piece - 1] == _piece[piece] ? from : 0;
        for (var b = start; b < _bins; b++)
        {
            if (_left[b] >= length && !AsMuchLeft(b, start))
            {
                _left[b] -= length;
                _binOf[piece] = b;
                if (Place(piece + 1, b))
                {
                    return true;
                }

                _left[b] += length;
                if (_left[b] == length)
                {
                    return false;
                }
            }
        }

        return false;
    }

    // What no pieces to come can fill.
    private long Lost(int piece)
    {
        var (shortest, lost) = (model.Lengths[_piece[^1]], 0L);
        for (var b = 0; b < _bins; b++)
        {
            lost += _left[b] < shortest ? _left[b] : _sums!.Known ? _left[b] - _sums.Most(piece, _left[b]) : 0;
        }

        return lost;
    }

    private bool AsMuchLeft(int bin, int start)
    {
        for (var b = start; b < bin; b++)
        {
            if (_left[b] == _left[bin])
            {
                return true;
            }
        }

        return false;
    }
}
