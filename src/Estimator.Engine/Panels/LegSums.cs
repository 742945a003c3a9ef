using System.Numerics;

namespace Estimator.Engine.Panels;

/// <summary>Which sums of loads can stand on leg A, for each number of breakers there and after each load: a bit a sum.</summary>
internal sealed class LegSums
{
    private const int Bits = 64;

    private readonly int[] _loads;
    private readonly int[] _starts;
    private readonly ulong[][] _after;

    /// <summary>Follows the loads in their order.</summary>
    /// <param name="loads">Loads in whole units, the heaviest first: so many of them come to no more than the first so many.</param>
    /// <param name="mostOnA">Breakers that leg A takes.</param>
    internal LegSums(int[] loads, int mostOnA)
    {
        (_loads, MostOnA, Total) = (loads, mostOnA, loads.Sum());
        _starts = new int[mostOnA + 2];
        for (var (onA, sum) = (0, 0); onA <= mostOnA; onA++)
        {
            _starts[onA + 1] = _starts[onA] + (sum / Bits) + 1;
            sum += onA < loads.Length ? loads[onA] : 0;
        }

        _after = [.. Enumerable.Range(0, loads.Length + 1).Select(i => new ulong[_starts[Math.Min(i, mostOnA) + 1]])];
        _after[0][0] = 1;
        for (var i = 0; i < loads.Length; i++)
        {
            _after[i].CopyTo(_after[i + 1], 0);
            for (var onA = 0; onA <= Math.Min(i, mostOnA - 1); onA++)
            {
                Shift(Row(i, onA), Row(i + 1, onA + 1), loads[i]);
            }
        }
    }

    internal int Count => _loads.Length;

    internal int MostOnA { get; }

    internal int Total { get; }

    internal int Load(int index) => _loads[index];

    /// <summary>Whether a number of the first loads can come to a sum.</summary>
    internal bool Reached(int loads, int onA, int sum) => onA <= Math.Min(loads, MostOnA) && Row(loads, onA) is var row && sum / Bits < row.Length && (row[sum / Bits] >> (sum % Bits) & 1) != 0;

    /// <summary>The greatest sum of so many of all loads that is not above another; -1 where there is none.</summary>
    internal int Before(int onA, int sum)
    {
        var row = Row(Count, onA);
        for (var w = Math.Min(sum / Bits, row.Length - 1); w >= 0; w--)
        {
            var word = w == sum / Bits ? row[w] & (ulong.MaxValue >> (Bits - 1 - (sum % Bits))) : row[w];
            if (word != 0)
            {
                return (w * Bits) + BitOperations.Log2(word);
            }
        }

        return -1;
    }

    /// <summary>The least sum of so many of all loads that is above another; -1 where there is none.</summary>
    internal int After(int onA, int sum)
    {
        var row = Row(Count, onA);
        for (var w = sum / Bits; w < row.Length; w++)
        {
            var word = w == sum / Bits ? sum % Bits == Bits - 1 ? 0 : row[w] & (ulong.MaxValue << ((sum % Bits) + 1)) : row[w];
            if (word != 0)
            {
                return (w * Bits) + BitOperations.TrailingZeroCount(word);
            }
        }

        return -1;
    }

    private Span<ulong> Row(int loads, int onA) => _after[loads].AsSpan(_starts[onA].._starts[onA + 1]);

    // Every sum goes up by a load. Sums beyond the row cannot be: a row holds all that so many of the heaviest loads come to.
    private static void Shift(ReadOnlySpan<ulong> from, Span<ulong> into, int by)
    {
        var (words, bits) = (by / Bits, by % Bits);
        into = into[Math.Min(words, into.Length)..];
        for (var w = 0; w < Math.Min(from.Length, into.Length); w++)
        {
            into[w] |= from[w] << bits;
        }

        for (var w = 1; bits > 0 && w <= from.Length && w < into.Length; w++)
        {
            into[w] |= from[w - 1] >> (Bits - bits);
        }
    }
}
