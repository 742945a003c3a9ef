namespace Estimator.Engine.Purchase.Cutting;

/// <summary>The linear program over the patterns known so far: the least price at which each item is cut often enough, patterns taken in any parts.</summary>
/// <remarks>
/// Revised simplex. Floating point guides the search only: what is printed as a bound is worked out again in whole numbers from the prices found here (<see cref="RoomRules"/>).
/// Source: "A linear programming approach to the cutting-stock problem", Operations Research 9(6), 1961, and part II, 11(6), 1963 (from memory).
/// </remarks>
internal sealed class MasterProblem
{
    private const double Tolerance = 1e-7;

    private readonly CuttingModel _model;
    private readonly PatternPool _pool;
    private readonly StepMeter _meter;
    private readonly Basis _basis;
    private readonly int[] _rowOfItem;
    private readonly int[] _rowOfStock;
    private readonly int[] _alone;
    private readonly int[] _demands;
    private readonly bool[] _usable;
    private int _itemRows;
    private int _seen;

    internal MasterProblem(CuttingModel model, PatternPool pool, StepMeter meter, int mostPatterns)
    {
        (_model, _pool, _meter) = (model, pool, meter);
        _basis = new Basis(model.Lengths.Length + model.StockLengths.Length, meter);
        (_rowOfItem, _rowOfStock) = (new int[model.Lengths.Length], new int[model.StockLengths.Length]);
        (_alone, _demands) = (new int[model.Lengths.Length], new int[model.Lengths.Length]);
        _usable = new bool[mostPatterns];
    }

    internal int Rows => _basis.Rows;

    /// <summary>The pattern that is basic in a row; below zero for what is cut too often or left of few stocks.</summary>
    internal int BasicIn(int row) => _basis.Columns[row];

    /// <summary>How much of the pattern that is basic in a row is taken.</summary>
    internal double ValueIn(int row) => _basis.Values[row];

    internal double DualOfItem(int item) => _rowOfItem[item] < 0 ? 0 : _basis.Duals[_rowOfItem[item]];

    internal double DualOfStock(int stock) => _rowOfStock[stock] < 0 ? 0 : _basis.Duals[_rowOfStock[stock]];

    /// <summary>Starts anew for some demands: one pattern an item, of its pieces alone at the least price a piece.</summary>
    internal void Start(ReadOnlySpan<int> demands, ReadOnlySpan<int> limits, Span<int> counts)
    {
        demands.CopyTo(_demands);
        counts.Clear();
        for (var i = 0; i < demands.Length; i++)
        {
            if (demands[i] > 0)
            {
                counts[i] = Math.Min(demands[i], _model.LongestBought / _model.Lengths[i]);
                _pool.Add(counts, _model.CheapestFor((long)counts[i] * _model.Lengths[i]));
                counts[i] = 0;
            }
        }

        _seen = 0;
        Look();
        FindAlone();
        _basis.Clear();
        for (var i = 0; i < demands.Length; i++)
        {
            _rowOfItem[i] = demands[i] > 0 ? _basis.Rows : -1;
            if (demands[i] > 0)
            {
                _basis.Add(demands[i], _alone[i], _pool.CountsOf(_alone[i])[0], PriceOf(_alone[i]));
            }
        }

        _itemRows = _basis.Rows;
        for (var k = 0; k < limits.Length; k++)
        {
            _rowOfStock[k] = _model.Limited(k) ? _basis.Rows : -1;
            if (_model.Limited(k))
            {
                _basis.Add(limits[k], ~_basis.Rows, 1, 0);
            }
        }

        _basis.Refresh();
    }

    /// <summary>Takes in new patterns, then exchanges basic columns until none of those known lowers the price.</summary>
    internal void Optimise()
    {
        Look();
        while (!_meter.Spent)
        {
            var (column, gain) = Entering();
            if (gain >= -Tolerance)
            {
                return;
            }

            Fill(column);
            if (!_basis.Exchange(column, PriceOf(column), gain))
            {
                return;
            }
        }
    }

    private double PriceOf(int column) => column < 0 ? 0 : _model.StockPrices[_pool.StockOf(column)];

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

    private void FindAlone()
    {
        Array.Fill(_alone, -1);
        for (var p = 0; p < _seen; p++)
        {
            if (_usable[p] && _pool.ItemsOf(p) is [var item] && !_model.Limited(_pool.StockOf(p)) && (_alone[item] < 0 || Rate(p) < Rate(_alone[item])))
            {
                _alone[item] = p;
            }
        }
    }

    private double Rate(int pattern) => PriceOf(pattern) / _pool.CountsOf(pattern)[0];

    private (int Column, double Gain) Entering()
    {
        var (best, gain) = (0, -Tolerance);
        for (var r = 0; r < _basis.Rows; r++)
        {
            // What is cut too often enters at its price, what is left of few stocks at less than nothing.
            var reduced = r < _itemRows ? _basis.Duals[r] : -_basis.Duals[r];
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
        var reduced = PriceOf(pattern) - DualOfStock(_pool.StockOf(pattern));
        for (var n = 0; n < items.Length; n++)
        {
            reduced -= counts[n] * _basis.Duals[_rowOfItem[items[n]]];
        }

        return reduced;
    }

    // The column of a pattern, or of a surplus, seen from the basis.
    private void Fill(int column)
    {
        for (var r = 0; r < _basis.Rows; r++)
        {
            var row = _basis.InverseRow(r);
            if (column < 0)
            {
                _basis.Entering[r] = ~column < _itemRows ? -row[~column] : row[~column];
                continue;
            }

            var items = _pool.ItemsOf(column);
            var counts = _pool.CountsOf(column);
            var stock = _rowOfStock[_pool.StockOf(column)];
            var sum = stock < 0 ? 0 : row[stock];
            for (var n = 0; n < items.Length; n++)
            {
                sum += counts[n] * row[_rowOfItem[items[n]]];
            }

            _basis.Entering[r] = sum;
        }
    }
}
