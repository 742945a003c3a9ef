using System.Collections.Immutable;
using Estimator.Engine.Draws;

namespace Estimator.Engine.Pricing.Ranges;

/// <summary>Sorts the draws of a price into columns of one width, whose ends are round dollars.</summary>
internal static class RangeBins
{
    internal static ImmutableArray<RangeBin> Of(DrawnCost cost, decimal price, int most)
    {
        decimal Dollars(long change) => price + (price * change / Triangle.One);
        var (least, greatest) = (Dollars(cost.Changes[0]), Dollars(cost.Changes[^1]));
        if (greatest <= least)
        {
            return price > 0 ? [new RangeBin(price, price, cost.Changes.Length)] : [];
        }

        var width = Widths().First(w => decimal.Floor(greatest / w) - decimal.Floor(least / w) < most);
        var first = decimal.Floor(least / width);
        var counts = new int[(int)(decimal.Floor(greatest / width) - first) + 1];
        foreach (var change in cost.Changes)
        {
            counts[(int)(decimal.Floor(Dollars(change) / width) - first)]++;
        }

        return [.. counts.Select((n, i) => new RangeBin((first + i) * width, (first + i + 1) * width, n))];
    }

    // 1, 2, 5, 10, 20, 50 and so on.
    private static IEnumerable<decimal> Widths()
    {
        for (var ten = 1m; ; ten *= 10)
        {
            yield return ten;
            yield return 2 * ten;
            yield return 5 * ten;
        }
    }
}
