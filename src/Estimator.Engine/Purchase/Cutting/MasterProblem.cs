namespace Estimator.Engine.Purchase.Cutting;

/// <summary>The linear program over the patterns known so far: the least price at which each item is cut often enough, patterns taken in any parts.</summary>
/// <remarks>
/// Revised simplex with a dense inverse. Floating point guides the search only: what is printed as a bound is worked out again in whole numbers from the prices found here
/// (<see cref="RoomRules"/>). Source: "A linear programming approach to the cutting-stock problem", Operations Research 9(6), 1961, and part II, 11(6), 1963 (from memory).
/// </remarks>
internal sealed class MasterProblem
{
    private const double Tolerance = 1e-7;
    private const int PivotsBetweenInverses = 150;

    private readonly CuttingModel _model;
    private readonly PatternPool _pool;
    private readonly StepMeter _meter;
    private readonly int[] _rowOfItem;
    private readonly int[] _rowOfStock;
    private readonly int[] _itemOfRow;
    private readonly int[] _demands;
    private readonly int[] _basis;
    private readonly double[][] _inverse;
    private readonly double[] _right;
    private readonly double[] _column;
    private readonly bool[] _usable;
    private int _rows;
    private int _itemRows;
    private int _seen;
    private int _pivots;

    internal MasterProblem(CuttingModel model, PatternPool pool, StepMeter meter, int mostPatterns)
    {
        (_model, _pool, _meter) = (model, pool, meter);
        var most = model.Lengths.Length + model.StockLengths.Length;
        (_rowOfItem, _rowOfStock, _itemOfRow) = (new int[model.Lengths.Length], new int[model.StockLengths.Length], new int[most]);
        _demands = new int[model.Lengths.Length];
        (_basis, _right, _column) = (new int[most], new double[most], new double[most]);
        Values = new double[most];
        Duals = new double[most];
        _inverse = [.. Enumerable.Range(0, most).Select(_ => new double[most])];
        _usable = new bool[mostPatterns];
    }

    /// <summary>How much of each basic column is taken.</summary>
    internal double[] Values { get; }

    internal double[] Duals { get; }

    internal int Rows => _rows;

    /// <summary>The pattern that is basic in a row; below zero for what is cut too often or left of few stocks.</summary>
    internal int BasicIn(int row) => _basis[row];

    internal double DualOfItem(int item) => _rowOfItem[item] < 0 ? 0 : Duals[_rowOfItem[item]];

    internal double DualOfStock(int stock) => _rowOfStock[stock] < 0 ? 0 : Duals[_rowOfStock[stock]];

    /// <summary>Starts anew for some demands: one pattern an item, of as many of its pieces as the cheapest stock for them takes.</summary>
    internal void Start(ReadOnlySpan<int> demands, ReadOnlySpan<int> limits, Span<int> counts)
    {
        demands.CopyTo(_demands);
        (_rows, _seen) = (0, 0);
        counts.Clear();
        for (var i = 0; i < demands.Length; i++)
        {
            _rowOfItem[i] = demands[i] > 0 ? _rows : -1;
            if (demands[i] > 0)
            {
                counts[i] = Math.Min(demands[i], _model.LongestBought / _model.Lengths[i]);
                _pool.Add(counts, _model.CheapestFor((long)counts[i] * _model.Lengths[i]));
                counts[i] = 0;
                (_itemOfRow[_rows], _right[_rows]) = (i, demands[i]);
                _rows++;
            }
        }

        _itemRows = _rows;
        for (var k = 0; k < limits.Length; k++)
        {
            _rowOfStock[k] = _model.Limited(k) ? _rows : -1;
            if (_model.Limited(k))
            {
                _right[_rows++] = limits[k];
            }
        }

        Look();
        for (var r = 0; r < _rows; r++)
        {
            _basis[r] = ~r;
        }

        for (var p = 0; p < _pool.Count && p < _usable.Length; p++)
        {
            var items = _pool.ItemsOf(p);
            if (_usable[p] && items.Length == 1 && !_model.Limited(_pool.StockOf(p)))
            {
                var (row, count) = (_rowOfItem[items[0]], _pool.CountsOf(p)[0]);
                if (_basis[row] < 0 || Rate(p, count) < Rate(_basis[row], _pool.CountsOf(_basis[row])[0]))
                {
                    _basis[row] = p;
                }
            }
        }

        for (var r = 0; r < _rows; r++)
        {
            var row = _inverse[r].AsSpan(0, _rows);
            row.Clear();
            row[r] = r < _itemRows ? 1.0 / _pool.CountsOf(_basis[r])[0] : 1;
        }

        _pivots = 0;
        Recompute();
    }

    /// <summary>Takes in new patterns, then exchanges basic columns until none of those known lowers the price.</summary>
    internal void Optimise()
    {
        Look();
        while (!_meter.Spent)
        {
            var (enter, gain) = Entering();
            if (gain >= -Tolerance || !Pivot(enter, gain))
            {
                return;
            }
        }
    }

    private double Rate(int pattern, int count) => (double)_model.StockPrices[_pool.StockOf(pattern)] / count;

    // A pattern can be used where it takes no item more often than is wanted.
    private void Look()
    {
        for (; _seen < _pool.Count && _seen < _usable.Length; _seen++)
        {
            var items = _pool.ItemsOf(_seen);
            var counts = _pool.CountsOf(_seen);
            var usable = true;
            for (var n = 0; n < items.Length && usable; n++)
            {
                usable = counts[n] <= _demands[items[n]];
            }

            _usable[_seen] = usable;
        }
    }

    private (int Column, double Gain) Entering()
    {
        var (best, gain) = (0, -Tolerance);
        for (var r = 0; r < _rows; r++)
        {
            // What is cut too often enters at its price, what is left of few stocks at less than nothing.
            var reduced = r < _itemRows ? Duals[r] : -Duals[r];
            if (reduced < gain)
            {
                (best, gain) = (~r, reduced);
            }
        }

        for (var p = 0; p < _seen; p++)
        {
            if (_usable[p])
            {
                var reduced = Reduced(p);
                if (reduced < gain)
                {
                    (best, gain) = (p, reduced);
                }
            }
        }

        _meter.Add(4L * _seen);
        return (best, gain);
    }

    private double Reduced(int pattern)
    {
        var items = _pool.ItemsOf(pattern);
        var counts = _pool.CountsOf(pattern);
        var stock = _pool.StockOf(pattern);
        var reduced = _model.StockPrices[stock] - DualOfStock(stock);
        for (var n = 0; n < items.Length; n++)
        {
            reduced -= counts[n] * Duals[_rowOfItem[items[n]]];
        }

        return reduced;
    }

    private bool Pivot(int enter, double gain)
    {
        Fill(enter, _column);
        var (leave, ratio) = (-1, double.MaxValue);
        for (var r = 0; r < _rows; r++)
        {
            if (_column[r] > 1e-9)
            {
                var here = Math.Max(0, Values[r]) / _column[r];
                if (here < ratio - 1e-12 || (here <= ratio + 1e-12 && leave >= 0 && _column[r] > _column[leave]))
                {
                    (leave, ratio) = (r, here);
                }
            }
        }

        if (leave < 0)
        {
            return false;
        }

        Exchange(enter, leave);
        for (var r = 0; r < _rows; r++)
        {
            Values[r] = r == leave ? ratio : Values[r] - (ratio * _column[r]);
            Duals[r] += gain * _inverse[leave][r];
        }

        _meter.Add((long)_rows * _rows);
        if (++_pivots >= PivotsBetweenInverses)
        {
            Recompute();
        }

        return true;
    }

    // The column of a pattern, or of a surplus, seen from the basis.
    private void Fill(int column, double[] into)
    {
        for (var r = 0; r < _rows; r++)
        {
            var row = _inverse[r];
            if (column < 0)
            {
                into[r] = ~column < _itemRows ? -row[~column] : row[~column];
                continue;
            }

            var items = _pool.ItemsOf(column);
            var counts = _pool.CountsOf(column);
            var sum = 0.0;
            for (var n = 0; n < items.Length; n++)
            {
                sum += counts[n] * row[_rowOfItem[items[n]]];
            }

            var stock = _rowOfStock[_pool.StockOf(column)];
            into[r] = stock < 0 ? sum : sum + row[stock];
        }
    }

    private void Exchange(int enter, int leave)
    {
        _basis[leave] = enter;
        var pivot = _inverse[leave].AsSpan(0, _rows);
        var by = 1.0 / _column[leave];
        for (var c = 0; c < pivot.Length; c++)
        {
            pivot[c] *= by;
        }

        for (var r = 0; r < _rows; r++)
        {
            var factor = _column[r];
            if (r != leave && factor != 0)
            {
                var row = _inverse[r].AsSpan(0, pivot.Length);
                for (var c = 0; c < row.Length; c++)
                {
                    row[c] -= factor * pivot[c];
                }
            }
        }
    }

    // Values and prices anew from the inverse: what rounding added up is gone.
    private void Recompute()
    {
        _pivots = 0;
        Array.Clear(Duals);
        for (var r = 0; r < _rows; r++)
        {
            var (row, sum) = (_inverse[r], 0.0);
            var price = _basis[r] < 0 ? 0 : _model.StockPrices[_pool.StockOf(_basis[r])];
            for (var c = 0; c < _rows; c++)
            {
                sum += row[c] * _right[c];
                Duals[c] += price * row[c];
            }

            Values[r] = sum;
        }
    }
}
