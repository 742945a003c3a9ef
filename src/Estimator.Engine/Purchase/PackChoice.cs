using System.Collections.Immutable;
using Estimator.Engine.Catalogue;

namespace Estimator.Engine.Purchase;

/// <summary>Buys a number of pieces in packs at least cost.</summary>
/// <remarks>Exact, by dynamic programming over the number needed; of equal costs the one with least left over, then with fewest packs.</remarks>
public static class PackChoice
{
    /// <summary>How many of each offer to buy; empty where nothing is offered.</summary>
    /// <param name="need">Pieces needed.</param>
    /// <param name="offers">The packs.</param>
    public static ImmutableArray<PackCount> Cheapest(int need, IReadOnlyList<Offer> offers)
    {
        if (need <= 0 || offers.Count == 0)
        {
            return [];
        }

        var sizes = offers.Select(o => o.PackSize).ToArray();
        var prices = offers.Select(o => o.Price.ToDollars()).ToArray();
        var best = new (decimal Cost, int Left, int Packs, int Offer)[need + 1];
        for (var n = 1; n <= need; n++)
        {
            ref var found = ref best[n];
            for (var o = 0; o < sizes.Length; o++)
            {
                ref var rest = ref best[Math.Max(0, n - sizes[o])];
                var cost = rest.Cost + prices[o];
                if (o > 0 && cost > found.Cost)
                {
                    continue;
                }

                var (left, packs) = (rest.Left + Math.Max(0, sizes[o] - n), rest.Packs + 1);
                if (o == 0 || cost < found.Cost || left < found.Left || (left == found.Left && packs < found.Packs))
                {
                    found = (cost, left, packs, o);
                }
            }
        }

        var counts = new int[sizes.Length];
        for (var n = need; n > 0; n -= sizes[best[n].Offer])
        {
            counts[best[n].Offer]++;
        }

        return [.. counts.Select((c, o) => new PackCount(offers[o], c)).Where(p => p.Count > 0)];
    }
}
