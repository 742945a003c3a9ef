using System.Collections.Concurrent;

namespace Estimator.Engine.Draws;

/// <summary>The draws of one stream: every equal slice of a distribution once, in an order that its number alone decides.</summary>
/// <remarks>
/// One draw from each slice (McKay, Beckman and Conover, Technometrics 21, 1979) leaves no luck in a single factor, only in how factors meet. The order is
/// a Fisher-Yates shuffle by SplitMix64 (Steele, Lea and Flood, OOPSLA 2014), in whole numbers alone.
/// </remarks>
public static class DrawStream
{
    // More than the rule tables ever name; what comes beyond is made each time.
    private const int Kept = 400;

    private static readonly ConcurrentDictionary<(int Stream, int Draws), int[]> Orders = new();
    private static readonly ConcurrentDictionary<(Triangle Spread, int Draws), long[]> Slices = new();

    /// <summary>Number of the stream with a name: the FNV-1a hash of its text, without its sign.</summary>
    public static int Named(string name)
    {
        var hash = 2_166_136_261u;
        foreach (var letter in name)
        {
            hash = unchecked((hash ^ letter) * 16_777_619u);
        }

        return (int)(hash >> 1);
    }

    /// <summary>Adds a factor's draws, times its weight, to those of others.</summary>
    internal static void AddTo(long[] sums, int stream, Triangle spread, long weight)
    {
        var order = Remembered(Orders, (stream, sums.Length), Shuffled);
        var slices = Remembered(Slices, (spread, sums.Length), Sliced);
        for (var i = 0; i < sums.Length; i++)
        {
            sums[i] += weight * slices[order[i]];
        }
    }

    private static T[] Remembered<TKey, T>(ConcurrentDictionary<TKey, T[]> known, TKey key, Func<TKey, T[]> make)
        where TKey : notnull => known.Count < Kept ? known.GetOrAdd(key, make) : known.TryGetValue(key, out var made) ? made : make(key);

    // The middle of each slice.
    private static long[] Sliced((Triangle Spread, int Draws) of) => [.. Enumerable.Range(0, of.Draws).Select(k => of.Spread.Quantile(2 * k + 1, 2 * of.Draws))];

    private static int[] Shuffled((int Stream, int Draws) of)
    {
        var (order, state) = (Enumerable.Range(0, of.Draws).ToArray(), (ulong)of.Stream);
        for (var i = of.Draws - 1; i > 0; i--)
        {
            var other = (int)Math.BigMul(Next(ref state), (ulong)i + 1, out _);
            (order[i], order[other]) = (order[other], order[i]);
        }

        return order;
    }

    private static ulong Next(ref ulong state)
    {
        unchecked
        {
            state += 0x9E37_79B9_7F4A_7C15;
            var z = (state ^ (state >> 30)) * 0xBF58_476D_1CE4_E5B9;
            z = (z ^ (z >> 27)) * 0x94D0_49BB_1331_11EB;
            return z ^ (z >> 31);
        }
    }
}
