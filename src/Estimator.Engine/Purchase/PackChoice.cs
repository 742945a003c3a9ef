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

        var best = new (decimal Cost, int Left, int Packs, int Offer)[need + 1];
        for (var n = 1; n <= need; n++)
        {
            best[n] = Enumerable.Range(0, offers.Count).Select(o =>
            {
                var rest = best[Math.Max(0, n - offers[o].PackSize)];
                var left = Math.Max(0, offers[o].PackSize - n);
                return (Cost: rest.Cost + offers[o].Price.ToDollars(), Left: rest.Left + left, Packs: rest.Packs + 1, Offer: o);
            }).Min();
        }

        var counts = new int[offers.Count];
        for (var n = need; n > 0; n -= offers[best[n].Offer].PackSize)
        {
            counts[best[n].Offer]++;
        }

        return [.. counts.Select((c, o) => new PackCount(offers[o], c)).Where(p => p.Count > 0)];
    }
}
