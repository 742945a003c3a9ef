namespace Estimator.Engine.Purchase.Cutting;

/// <summary>Fills stocks of a set one after the other, each as full as is needed for the rest to fit (minimum bin slack), the longest pieces first.</summary>
/// <remarks>Source: "A heuristic for the one-dimensional bin packing problem: minimum bin slack", Computers &amp; Operations Research 26, 1999 (from memory).</remarks>
internal sealed class BinFilling(CuttingModel model, StepMeter meter)
{
    private const int MostSteps = 4_000;

    private readonly int[] _left = new int[model.Lengths.Length];
    private readonly int[] _best = new int[model.Lengths.Length];
    private readonly int[] _now = new int[model.Lengths.Length];
    private readonly int[] _firstPiece = [.. Enumerable.Range(0, model.Lengths.Length).Select(i => model.Demands.Take(i).Sum())];
    private long _least;
    private long _enough;
    private int _steps;

    /// <summary>Fills the stocks in an order; true where all pieces are in.</summary>
    /// <param name="stocks">The stock of each bin.</param>
    /// <param name="slack">Length of the stocks beyond that of the pieces.</param>
    /// <param name="fromFirst">Whether the first bin is filled first.</param>
    /// <param name="binOf">Takes the bin of each piece; pieces of an item are numbered together.</param>
    internal bool Fill(ReadOnlySpan<int> stocks, long slack, bool fromFirst, Span<int> binOf)
    {
        model.Demands.CopyTo(_left, 0);
        for (var b = 0; b < stocks.Length && slack >= 0; b++)
        {
            var bin = fromFirst ? b : stocks.Length - 1 - b;
            Array.Clear(_now);
            Array.Clear(_best);
            (_least, _steps, _enough) = (model.StockLengths[stocks[bin]], 0, slack / (stocks.Length - b));
            Fill(0, _least);
            slack -= _least;
            meter.Add(_steps);
            for (var i = 0; i < _left.Length; i++)
            {
                _left[i] -= _best[i];
                binOf.Slice(_firstPiece[i] + _left[i], _best[i]).Fill(bin);
            }
        }

        return _left.AsSpan().IndexOfAnyExcept(0) < 0;
    }

    private bool Fill(int item, long room)
    {
        if (room < _least)
        {
            _least = room;
            _now.CopyTo(_best, 0);
        }

        if (room <= _enough || ++_steps > MostSteps)
        {
            return true;
        }

        for (var i = item; i < _left.Length; i++)
        {
            var length = model.Lengths[i];
            if (_left[i] > _now[i] && length <= room)
            {
                _now[i]++;
                var done = Fill(i, room - length);
                _now[i]--;
                if (done)
                {
                    return true;
                }
            }
        }

        return false;
    }
}
