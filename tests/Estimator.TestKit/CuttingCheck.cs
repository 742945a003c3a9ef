namespace Estimator.TestKit;

/// <summary>Judges a cutting plan from lengths and prices alone, and finds the least price of small problems by trying every way; it knows nothing of the solver.</summary>
public static class CuttingCheck
{
    /// <summary>What is wrong with a plan; nothing where it holds.</summary>
    /// <param name="stocks">Length, price and, where there are few, number of each stock.</param>
    /// <param name="wanted">Length of every piece.</param>
    /// <param name="bins">Index of a stock, and the lengths cut from it.</param>
    /// <param name="price">What the plan says it costs.</param>
    public static IEnumerable<string> Problems(
        IReadOnlyList<(long Length, long Price, int? Count)> stocks, IEnumerable<long> wanted, IReadOnlyList<(int Stock, IReadOnlyList<long> Pieces)> bins, long price)
    {
        foreach (var (stock, pieces) in bins)
        {
            if (pieces.Sum() > stocks[stock].Length)
            {
                yield return $"{pieces.Sum()} is cut from a stock of {stocks[stock].Length}";
            }
        }

        if (!wanted.Order().SequenceEqual(bins.SelectMany(b => b.Pieces).Order()))
        {
            yield return "the pieces are not those that were asked for";
        }

        if (bins.Sum(b => stocks[b.Stock].Price) != price)
        {
            yield return $"the stocks cost {bins.Sum(b => stocks[b.Stock].Price)}, not {price}";
        }

        foreach (var used in bins.GroupBy(b => b.Stock).Where(g => g.Count() > (stocks[g.Key].Count ?? int.MaxValue)))
        {
            yield return $"stock {used.Key} is cut {used.Count()} times";
        }
    }

    /// <summary>The least price, every way of dividing the pieces tried: each piece goes to a stock of which there are few, to an opened one or to a new one.</summary>
    public static long LeastPrice(IReadOnlyList<(long Length, long Price, int? Count)> stocks, IReadOnlyList<long> pieces)
    {
        var few = stocks.Where(s => s.Count is not null).SelectMany(s => Enumerable.Repeat(s, s.Count!.Value)).ToList();
        return Least([.. stocks.Where(s => s.Count is null)], few, pieces, 0, new long[few.Count], []);
    }

    private static long Least(
        List<(long Length, long Price, int? Count)> any, List<(long Length, long Price, int? Count)> few, IReadOnlyList<long> pieces, int next, long[] inFew, List<long> opened)
    {
        if (next == pieces.Count)
        {
            return few.Select((s, i) => inFew[i] > 0 ? s.Price : 0).Sum() + opened.Sum(load => any.Where(s => s.Length >= load).Min(s => s.Price));
        }

        var (best, longest) = (long.MaxValue, any.Max(s => s.Length));
        for (var b = 0; b < few.Count; b++)
        {
            if (inFew[b] + pieces[next] <= few[b].Length)
            {
                inFew[b] += pieces[next];
                best = Math.Min(best, Least(any, few, pieces, next + 1, inFew, opened));
                inFew[b] -= pieces[next];
            }
        }

        for (var b = 0; b <= opened.Count; b++)
        {
            List<long> tried = [.. opened];
            if (b == opened.Count)
            {
                tried.Add(0);
            }

            tried[b] += pieces[next];
            best = tried[b] <= longest ? Math.Min(best, Least(any, few, pieces, next + 1, inFew, tried)) : best;
        }

        return best;
    }
}
