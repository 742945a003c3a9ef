namespace Estimator.Engine.Purchase.Cutting;

/// <summary>The most valuable choice of pieces for every stock at once, each piece as often as it is wanted.</summary>
/// <remarks>
/// Exact, by dynamic programming over the longest stock. Where the lengths are too fine for that they are counted in a coarser unit: rounded down they overrate what a stock
/// holds, which keeps bounds valid; rounded up they underrate it, which keeps patterns within the stock.
/// Source: "Knapsack Problems: Algorithms and Computer Implementations", 1990, the bounded problem by binary numbers of copies (from memory).
/// </remarks>
internal sealed class BoundedKnapsack
{
    private const int MostUnits = 4000;

    private readonly CuttingModel _model;
    private readonly StepMeter _meter;
    private readonly int _unit;
    private readonly int[] _capacities;
    private readonly long[] _values;
    private readonly ulong[] _taken;
    private readonly int _words;
    private readonly int[] _copyItem;
    private readonly int[] _copyCount;
    private readonly int[] _copySize;
    private int _copies;

    internal BoundedKnapsack(CuttingModel model, StepMeter meter)
    {
        (_model, _meter) = (model, meter);
        _unit = ((model.Longest - 1) / MostUnits) + 1;
        _capacities = [.. model.StockLengths.Select(l => l / _unit)];
        var longest = model.Longest / _unit;
        _values = new long[longest + 1];
        _words = (longest / 64) + 1;
        var most = model.Demands.Sum(d => 64 - System.Numerics.BitOperations.LeadingZeroCount((ulong)d));
        _taken = new ulong[(long)_words * most];
        (_copyItem, _copyCount, _copySize) = (new int[most], new int[most], new int[most]);
    }

    /// <summary>Whether no length was rounded.</summary>
    internal bool Exact => _unit == 1;

    /// <summary>Works out the best choice for all stocks.</summary>
    /// <param name="worth">Value of a piece of each item; none that is zero or less is taken.</param>
    /// <param name="demands">How often each may be taken.</param>
    /// <param name="within">True to stay within the stocks, false to overrate what they hold.</param>
    internal void Solve(ReadOnlySpan<long> worth, ReadOnlySpan<int> demands, bool within)
    {
        Array.Clear(_values);
        _copies = 0;
        for (var i = 0; i < worth.Length; i++)
        {
            var left = worth[i] > 0 ? demands[i] : 0;
            var size = within ? ((_model.Lengths[i] - 1) / _unit) + 1 : _model.Lengths[i] / _unit;
            for (var count = 1; left > 0; count *= 2)
            {
                var take = Math.Min(count, left);
                left -= take;
                if ((long)size * take < _values.Length)
                {
                    Take(i, take, size * take, worth[i] * take);
                }
                else
                {
                    left = 0;
                }
            }
        }

        _meter.Add(((long)_copies * _values.Length) + 100);
    }

    /// <summary>The value of the best choice for a stock.</summary>
    internal long ValueOf(int stock) => _values[_capacities[stock]];

    /// <summary>The pieces of the best choice for a stock: adds to the count of each item.</summary>
    internal void Choice(int stock, Span<int> counts)
    {
        var room = _capacities[stock];
        for (var c = _copies - 1; c >= 0; c--)
        {
            if ((_taken[(c * _words) + (room >> 6)] >> (room & 63) & 1) != 0)
            {
                counts[_copyItem[c]] += _copyCount[c];
                room -= _copySize[c];
            }
        }
    }

    private void Take(int item, int count, int size, long worth)
    {
        (_copyItem[_copies], _copyCount[_copies], _copySize[_copies]) = (item, count, size);
        var taken = _taken.AsSpan(_copies++ * _words, _words);
        taken.Clear();
        var values = _values.AsSpan();
        unchecked
        {
            for (var room = values.Length - 1; room >= size; room--)
            {
                var with = values[room - size] + worth;
                if (with > values[room])
                {
                    values[room] = with;
                    taken[room >> 6] |= 1UL << (room & 63);
                }
            }
        }
    }
}
