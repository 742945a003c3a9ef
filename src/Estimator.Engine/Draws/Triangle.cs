using Estimator.Engine.Measures;

namespace Estimator.Engine.Draws;

/// <summary>A triangular distribution: the least, the likeliest and the most that a figure may be off from what was worked out.</summary>
/// <remarks>
/// In millionths; zero is as worked out. Its quantile is the inverse of F(x) = (x - a)^2 / ((b - a)(c - a)) below the mode c and 1 - (b - x)^2 / ((b - a)(b - c)) above it, in whole
/// numbers, so it is the same on every machine. Source: Evans, Hastings and Peacock, Statistical Distributions, triangular distribution; from memory.
/// </remarks>
public readonly record struct Triangle
{
    /// <summary>Parts of one.</summary>
    public const long One = 1_000_000;

    private const long Most = 10 * One;

    private Triangle(long low, long likely, long high) => (Low, Likely, High) = (low, likely, high);

    /// <summary>The least.</summary>
    public long Low { get; }

    /// <summary>The likeliest.</summary>
    public long Likely { get; }

    /// <summary>The most.</summary>
    public long High { get; }

    /// <summary>A distribution from hundredths.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The three are not in order, or lie beyond ten times the figure.</exception>
    public static Triangle FromPercent(decimal low, decimal likely, decimal high)
    {
        var (a, c, b) = (Millionths(low), Millionths(likely), Millionths(high));
        return a <= c && c <= b && a >= -Most && b <= Most
            ? new Triangle(a, c, b)
            : throw new ArgumentOutOfRangeException(nameof(likely), $"{low}, {likely}, {high} percent; accepted: least, likeliest and most in this order, from -1000 to 1000.");
    }

    /// <summary>The value below which a share of all draws lies.</summary>
    /// <param name="part">The share, as a part of <paramref name="whole"/>.</param>
    /// <param name="whole">What the part is of, to ten thousand.</param>
    public long Quantile(int part, int whole)
    {
        var (span, left, right) = (High - Low, Likely - Low, High - Likely);
        return part * span < left * whole
            ? Low + Roots.FloorOf(part * span * left / whole)
            : High - Roots.FloorOf((whole - part) * span * right / whole);
    }

    private static long Millionths(decimal percent) => decimal.ToInt64(decimal.Round(Math.Clamp(percent, -10_000, 10_000) * (One / 100), 0, MidpointRounding.AwayFromZero));
}
