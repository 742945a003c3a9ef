namespace Estimator.TestKit;

/// <summary>Triangular distributions once more, from the textbook and in floating point: quantile, mean and variance, and draws of sums.</summary>
/// <remarks>
/// Quantile, mean (a + b + c)/3 and variance (a2 + b2 + c2 - ab - ac - bc)/18. Source: Evans, Hastings and Peacock, Statistical Distributions, triangular distribution; from memory.
/// </remarks>
public static class Triangle
{
    public static decimal Percentile(decimal low, decimal likely, decimal high, decimal share)
    {
        var (a, c, b, p) = ((double)low, (double)likely, (double)high, (double)share);
        return b == a ? likely
            : p < (c - a) / (b - a) ? (decimal)(a + Math.Sqrt(p * (b - a) * (c - a)))
            : (decimal)(b - Math.Sqrt((1 - p) * (b - a) * (b - c)));
    }

    public static decimal Mean(decimal low, decimal likely, decimal high) => (low + likely + high) / 3;

    public static decimal Variance(decimal low, decimal likely, decimal high) =>
        (low * low + likely * likely + high * high - low * likely - low * high - likely * high) / 18;

    /// <summary>The percentile of draws: percentile, draws, then stream, share, least, likeliest and most of each factor.</summary>
    public static decimal DrawnPercentile(decimal[] x)
    {
        var sums = Sums(x);
        var at = Math.Clamp(x[0] / 100 * sums.Length - 0.5m, 0, sums.Length - 1);
        var below = (int)at;
        return sums[below] + (sums[Math.Min(below + 1, sums.Length - 1)] - sums[below]) * (at - below);
    }

    /// <summary>The share of draws to a change: the change, draws, then the factors.</summary>
    public static decimal DrawnShare(decimal[] x) => Sums(x) is var sums ? sums.Count(s => s <= x[0]) * 100m / sums.Length : 0;

    private static decimal[] Sums(decimal[] x)
    {
        var draws = (int)x[1];
        var sums = new double[draws];
        for (var f = 2; f < x.Length; f += 5)
        {
            var order = Order((ulong)x[f], draws);
            var slices = Enumerable.Range(0, draws).Select(k => (double)Percentile(x[f + 2], x[f + 3], x[f + 4], (k + 0.5m) / draws)).ToArray();
            for (var i = 0; i < draws; i++)
            {
                sums[i] += (double)x[f + 1] / 100 * slices[order[i]];
            }
        }

        return [.. sums.Order().Select(s => (decimal)s)];
    }

    // SplitMix64 and the shuffle of Fisher and Yates, as published.
    private static int[] Order(ulong state, int draws)
    {
        var order = Enumerable.Range(0, draws).ToArray();
        for (var i = draws - 1; i > 0; i--)
        {
            unchecked
            {
                state += 0x9E3779B97F4A7C15UL;
                var z = state;
                z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
                z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
                var j = (int)((UInt128)(z ^ (z >> 31)) * (UInt128)(i + 1) >> 64);
                (order[i], order[j]) = (order[j], order[i]);
            }
        }

        return order;
    }
}
