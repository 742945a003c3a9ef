namespace Estimator.Engine.Purchase.Cutting;

/// <summary>Tells whether the pieces can be cut from a given set of stocks.</summary>
/// <remarks>Best fit first; then each stock as full as possible, the smallest first (minimum bin slack); then a search of all ways, longest piece first, up to a number of steps.</remarks>
internal sealed class SetPacking(CuttingModel model, StepMeter meter)
{
    private const int MostSteps = 60_000;
    private const int MostPieces = 500;
    private const int MostFillingSteps = 4_000;

    private readonly int[] _piece = [.. Enumerable.Range(0, model.Lengths.Length).SelectMany(i => Enumerable.Repeat(i, model.Demands[i]))];
    private readonly int[] _binOf = new int[model.Pieces];
    private readonly int[] _counts = new int[model.Lengths.Length];
    private readonly int[] _filled = new int[model.Lengths.Length];
    private readonly int[] _fill = new int[model.Lengths.Length];
    private int[] _stock = [];
    private long[] _left = [];
    private int _bins;
    private long _slack;
    private long _least;
    private long _enough;
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

        if (FitsBest() || Fills(shortFirst: true) || Fills(shortFirst: false))
        {
            bins = Bins();
            return true;
        }

        if (_piece.Length > MostPieces)
        {
            return null;
        }

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

    private bool Fills(bool shortFirst)
    {
        model.Demands.CopyTo(_counts, 0);
        var slack = _slack;
        for (var b = 0; b < _bins && slack >= 0; b++)
        {
            var bin = shortFirst ? b : _bins - 1 - b;
            var room = (long)model.StockLengths[_stock[bin]];
            Array.Clear(_fill);
            Array.Clear(_filled);
            (_least, _steps, _enough) = (room, 0, slack / (_bins - b));
            Fill(0, room);
            slack -= _least;
            meter.Add(_steps);
            for (var i = 0; i < _counts.Length; i++)
            {
                _counts[i] -= _filled[i];
                Mark(i, _filled[i], bin, from: _counts[i]);
            }
        }

        return _counts.AsSpan().IndexOfAnyExcept(0) < 0;
    }

    // The pieces of an item are numbered together: those that are still to be placed are the first of them.
    private void Mark(int item, int count, int bin, int from)
    {
        var first = 0;
        for (var i = 0; i < item; i++)
        {
            first += model.Demands[i];
        }

        _binOf.AsSpan(first + from, count).Fill(bin);
    }

    private bool Fill(int item, long room)
    {
        if (room < _least)
        {
            _least = room;
            _fill.CopyTo(_filled, 0);
        }

        if (room <= _enough || ++_steps > MostFillingSteps)
        {
            return true;
        }

        for (var i = item; i < _counts.Length; i++)
        {
            var length = model.Lengths[i];
            if (_counts[i] > _fill[i] && length <= room)
            {
                _fill[i]++;
                var done = Fill(i, room - length);
                _fill[i]--;
                if (done)
                {
                    return true;
                }
            }
        }

        return false;
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

        // What is left on a stock and shorter than every piece to come is lost.
        var (length, shortest, lost) = (model.Lengths[_piece[piece]], model.Lengths[_piece[^1]], 0L);
        for (var b = 0; b < _bins; b++)
        {
            lost += _left[b] < shortest ? _left[b] : 0;
        }

        if (lost > _slack)
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
