namespace Estimator.Engine.Purchase.Cutting;

/// <summary>The basis of a linear program: its inverse, the values of the basic columns and the prices of the rows.</summary>
/// <remarks>Dense; additions, products and quotients alone, in one order, so that every machine comes to the same.</remarks>
/// <param name="mostRows">Most rows.</param>
/// <param name="meter">Counts the work.</param>
internal sealed class Basis(int mostRows, StepMeter meter)
{
    private const double LeastPivot = 1e-9;
    private const double Equal = 1e-12;

    private readonly double[][] _inverse = [.. Enumerable.Range(0, mostRows).Select(_ => new double[mostRows])];
    private readonly double[] _right = new double[mostRows];
    private readonly double[] _prices = new double[mostRows];
    private int _sinceFresh;

    internal int Rows { get; private set; }

    /// <summary>The column that is basic in each row; below zero for what is cut too often or left of few stocks.</summary>
    internal int[] Columns { get; } = new int[mostRows];

    /// <summary>How much of each basic column is taken.</summary>
    internal double[] Values { get; } = new double[mostRows];

    /// <summary>Price of a row.</summary>
    internal double[] Duals { get; } = new double[mostRows];

    /// <summary>The entering column seen from the basis.</summary>
    internal double[] Entering { get; } = new double[mostRows];

    internal void Clear() => Rows = 0;

    /// <summary>Adds a row whose basic column stands in it alone.</summary>
    internal void Add(double right, int column, double coefficient, double price)
    {
        foreach (var row in _inverse.AsSpan(0, Rows))
        {
            row[Rows] = 0;
        }

        _inverse[Rows].AsSpan().Clear();
        _inverse[Rows][Rows] = 1 / coefficient;
        (_right[Rows], Columns[Rows], _prices[Rows]) = (right, column, price);
        Rows++;
    }

    internal ReadOnlySpan<double> InverseRow(int row) => _inverse[row].AsSpan(0, Rows);

    /// <summary>Puts the entering column into the basis; false where nothing limits it.</summary>
    /// <param name="column">The column.</param>
    /// <param name="price">Its price.</param>
    /// <param name="gain">What a unit of it adds to the whole price, below zero.</param>
    internal bool Exchange(int column, double price, double gain)
    {
        var (leave, ratio) = (-1, double.MaxValue);
        for (var r = 0; r < Rows; r++)
        {
            if (Entering[r] > LeastPivot)
            {
                var here = Math.Max(0, Values[r]) / Entering[r];
                if (here < ratio - Equal || (here <= ratio + Equal && leave >= 0 && Entering[r] > Entering[leave]))
                {
                    (leave, ratio) = (r, here);
                }
            }
        }

        if (leave < 0)
        {
            return false;
        }

        (Columns[leave], _prices[leave]) = (column, price);
        Eliminate(leave);
        for (var r = 0; r < Rows; r++)
        {
            Values[r] = r == leave ? ratio : Values[r] - (ratio * Entering[r]);
            Duals[r] += gain * _inverse[leave][r];
        }

        meter.Add((long)Rows * Rows);
        if (++_sinceFresh >= Rows)
        {
            Refresh();
        }

        return true;
    }

    /// <summary>Values and prices anew from the inverse: what rounding added up is gone.</summary>
    internal void Refresh()
    {
        _sinceFresh = 0;
        Array.Clear(Duals);
        for (var r = 0; r < Rows; r++)
        {
            var (row, sum) = (_inverse[r], 0.0);
            for (var c = 0; c < Rows; c++)
            {
                sum += row[c] * _right[c];
                Duals[c] += _prices[r] * row[c];
            }

            Values[r] = sum;
        }
    }

    private void Eliminate(int leave)
    {
        var pivot = _inverse[leave].AsSpan(0, Rows);
        var by = 1.0 / Entering[leave];
        for (var c = 0; c < pivot.Length; c++)
        {
            pivot[c] *= by;
        }

        for (var r = 0; r < Rows; r++)
        {
            var factor = Entering[r];
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
}
