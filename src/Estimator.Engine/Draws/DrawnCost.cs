using System.Collections.Immutable;

namespace Estimator.Engine.Draws;

/// <summary>What a cost may come to: many draws, in each of which every factor takes a value of its own.</summary>
/// <remarks>
/// A factor is drawn once and moves all that it acts on, so what moves together does not cancel; factors are independent and their effects add. Source: GAO Cost Estimating
/// and Assessment Guide, GAO-20-195G, March 2020, step 9: three-point estimates as triangular distributions, risk drivers that act on several elements at once.
/// </remarks>
public sealed class DrawnCost
{
    /// <summary>The most draws.</summary>
    public const int MostDraws = 5_000;

    // Weights are hundred-millionths of the whole, so three hundred factors of ten times the cost stay far inside a long.
    private const long Whole = 100_000_000;

    private DrawnCost(long[] sorted) => Changes = [.. sorted];

    /// <summary>How far each draw is off what was worked out, in millionths of the cost, the least first.</summary>
    public ImmutableArray<long> Changes { get; }

    /// <summary>Draws a cost.</summary>
    /// <param name="factors">What moves it.</param>
    /// <param name="draws">How many draws, two to <see cref="MostDraws"/>.</param>
    public static DrawnCost Of(IEnumerable<DrawnFactor> factors, int draws)
    {
        if (draws is < 2 or > MostDraws)
        {
            throw new ArgumentOutOfRangeException(nameof(draws), draws, $"Accepted: 2 to {MostDraws} draws.");
        }

        var sums = new long[draws];
        foreach (var factor in factors)
        {
            DrawStream.AddTo(sums, factor.Stream, factor.Spread, decimal.ToInt64(decimal.Round(factor.SharePercent * (Whole / 100), 0, MidpointRounding.AwayFromZero)));
        }

        for (var i = 0; i < draws; i++)
        {
            sums[i] /= Whole;
        }

        Array.Sort(sums);
        return new DrawnCost(sums);
    }

    /// <summary>The change, in percent of the cost, that a share of the draws stays below.</summary>
    /// <param name="percent">The share.</param>
    /// <remarks>Between two draws it lies on the straight line; the k-th of n stands at (k - 1/2)/n. Source: Hyndman and Fan, The American Statistician 50 (1996), definition 5.</remarks>
    public decimal Percentile(decimal percent)
    {
        var at = Math.Clamp(percent / 100m * Changes.Length - 0.5m, 0, Changes.Length - 1);
        var below = decimal.ToInt32(decimal.Floor(at));
        var (from, to) = (Changes[below], Changes[Math.Min(below + 1, Changes.Length - 1)]);
        return decimal.Round(from + (to - from) * (at - below), 0, MidpointRounding.AwayFromZero) * 100m / Triangle.One;
    }

    /// <summary>The share of the draws that come to no more than a change, in percent.</summary>
    /// <param name="changePercent">The change, in percent of the cost.</param>
    public decimal ShareTo(decimal changePercent) => Changes.Count(c => c * 100m / Triangle.One <= changePercent) * 100m / Changes.Length;
}
