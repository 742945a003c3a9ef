namespace Estimator.Engine.Purchase.Cutting;

/// <summary>A problem made ready: lengths without their common divisor, equal lengths joined, stocks that another one beats left out.</summary>
internal sealed class CuttingModel
{
    internal CuttingModel(IReadOnlyList<(int Length, int Quantity)> items, IReadOnlyList<(int Length, long Price, int Limit)> stocks)
    {
        var wanted = items.Where(i => i.Quantity > 0).GroupBy(i => i.Length).OrderByDescending(g => g.Key).Select(g => (Length: g.Key, Demand: g.Sum(i => i.Quantity))).ToArray();
        var shortest = wanted[^1].Length;
        var kept = stocks.Select((s, i) => (s.Length, s.Price, s.Limit, Index: i)).Where(s => s.Length >= shortest && s.Limit > 0)
            .Where(s => !stocks.Select((o, i) => (o, i)).Any(x => x.o.Limit == int.MaxValue && x.o.Length >= s.Length && (x.o.Price < s.Price || (x.o.Price == s.Price && (x.o.Length > s.Length || (s.Limit == int.MaxValue && x.i < s.Index))))))
            .OrderBy(s => s.Length).ThenBy(s => s.Price).ThenBy(s => s.Index).ToArray();
        Divisor = wanted.Select(w => w.Length).Concat(kept.Select(s => s.Length)).Aggregate(0, Gcd);
        Lengths = [.. wanted.Select(w => w.Length / Divisor)];
        Demands = [.. wanted.Select(w => w.Demand)];
        StockLengths = [.. kept.Select(s => s.Length / Divisor)];
        StockPrices = [.. kept.Select(s => s.Price)];
        StockLimits = [.. kept.Select(s => s.Limit == int.MaxValue ? s.Limit : Math.Min(s.Limit, Demands.Sum()))];
        StockIndex = [.. kept.Select(s => s.Index)];
        Pieces = Demands.Sum();
        Total = Lengths.Zip(Demands, (l, d) => (long)l * d).Sum();
        Longest = kept.Max(s => s.Length) / Divisor;
        LongestBought = kept.Where(s => s.Limit == int.MaxValue).Max(s => s.Length) / Divisor;
        PriceStep = Math.Max(1, StockPrices.Aggregate(0L, Gcd));
        Seed = Lengths.Concat(Demands).Concat(StockLengths).Aggregate(14695981039346656037UL, (hash, x) => unchecked((hash ^ (ulong)x) * 1099511628211UL));
    }

    /// <summary>Lengths of the items, longest first.</summary>
    internal int[] Lengths { get; }

    internal int[] Demands { get; }

    /// <summary>Lengths of the stocks, shortest first.</summary>
    internal int[] StockLengths { get; }

    internal long[] StockPrices { get; }

    /// <summary>How many there are; the greatest number where any number can be bought.</summary>
    internal int[] StockLimits { get; }

    /// <summary>Index of each stock in the problem.</summary>
    internal int[] StockIndex { get; }

    internal int Pieces { get; }

    internal long Total { get; }

    internal int Longest { get; }

    internal int LongestBought { get; }

    /// <summary>Every price is a multiple of this.</summary>
    internal long PriceStep { get; }

    internal int Divisor { get; }

    internal ulong Seed { get; }

    internal bool Limited(int stock) => StockLimits[stock] != int.MaxValue;

    /// <summary>The cheapest stock, of those that can be bought in any number, that holds a load.</summary>
    internal int CheapestFor(long load)
    {
        var best = -1;
        for (var k = 0; k < StockLengths.Length; k++)
        {
            if (StockLengths[k] >= load && StockLimits[k] == int.MaxValue && (best < 0 || StockPrices[k] < StockPrices[best]))
            {
                best = k;
            }
        }

        return best;
    }

    private static int Gcd(int a, int b) => b == 0 ? a : Gcd(b, a % b);

    private static long Gcd(long a, long b) => b == 0 ? a : Gcd(b, a % b);
}
