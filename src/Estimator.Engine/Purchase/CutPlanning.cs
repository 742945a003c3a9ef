using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase;

/// <summary>Chooses coils for the runs of a cable and cuts them: every run one continuous piece, at least cost.</summary>
/// <remarks>
/// Sets of coils are tried in order of cost, from the cheapest that is long enough in all; the first that the pieces pack into is taken, best fit
/// decreasing or, where that fails, by a bounded exact search. Where no set packs within the limit, each coil is filled in turn and shrunk to the cheapest that holds it. The bound is the cost of
/// the cheapest set that is long enough in all, which no plan can beat.
/// </remarks>
public static class CutPlanning
{
    private const int MostSetsTried = 400;

    /// <summary>The plan for a cable.</summary>
    /// <param name="itemId">The cable.</param>
    /// <param name="pieces">The runs.</param>
    /// <param name="offers">Coils of one supplier or several.</param>
    public static CutPlan For(string itemId, IEnumerable<CutPiece> pieces, IReadOnlyList<Offer> offers)
    {
        var longest = offers.Select(o => o.PackSize).DefaultIfEmpty(0).Max();
        var sorted = pieces.OrderByDescending(p => p.Length).ThenBy(p => p.Run, StringComparer.Ordinal).ToList();
        ImmutableArray<CutPiece> tooLong = [.. sorted.Where(p => p.Length > Length.FromFeet(longest))];
        var cut = sorted.Except(tooLong).ToList();
        if (cut.Count == 0)
        {
            return new CutPlan(itemId, [], Money.Zero, Money.Zero, tooLong);
        }

        var total = cut.Aggregate(Length.Zero, (sum, p) => sum + p.Length);
        var feet = (int)decimal.Ceiling(total.ToFeet());
        var cheapest = offers.GroupBy(o => o.PackSize).Select(g => g.OrderBy(o => o.Price).ThenBy(o => o.Supplier, StringComparer.Ordinal).First()).OrderBy(o => o.PackSize).ToList();
        var bound = PackChoice.Cheapest(feet, cheapest).Aggregate(Money.Zero, (sum, p) => sum + p.Offer.Price * p.Count);
        var coils = FirstThatPacks(cut, cheapest, feet) ?? [.. Fill(cut, cheapest)];
        var cost = coils.Aggregate(Money.Zero, (sum, c) => sum + c.Offer.Price);
        return new CutPlan(itemId, coils, cost, Money.FromDollars(Math.Min(bound.ToDollars(), cost.ToDollars())), tooLong);
    }

    private static ImmutableArray<CutCoil>? FirstThatPacks(List<CutPiece> pieces, List<Offer> offers, int feet)
    {
        var filled = Fill(pieces, offers).ToImmutableArray();
        var worst = filled.Sum(c => c.Offer.Price.ToDollars());
        var queue = new PriorityQueue<int[], (decimal, int)>();
        queue.Enqueue(new int[offers.Count], (0, 0));
        var (tried, order) = (0, 0);
        while (tried < MostSetsTried && queue.TryDequeue(out var set, out var key) && key.Item1 < worst)
        {
            if (set.Select((c, o) => (long)c * offers[o].PackSize).Sum() >= feet)
            {
                tried++;
                if ((Pack(pieces, set, offers) ?? ExactPacking.Find(pieces, set, offers)) is { } packed)
                {
                    return packed;
                }
            }

            // Each set is reached once: it only grows by coils at or after its last kind.
            for (var o = Math.Max(0, Array.FindLastIndex(set, c => c > 0)); o < offers.Count && order < 200_000; o++)
            {
                var grown = (int[])set.Clone();
                grown[o]++;
                queue.Enqueue(grown, (key.Item1 + offers[o].Price.ToDollars(), ++order));
            }
        }

        return filled;
    }

    private static ImmutableArray<CutCoil>? Pack(List<CutPiece> pieces, int[] set, List<Offer> offers)
    {
        var coils = set.SelectMany((count, o) => Enumerable.Repeat(offers[o], count)).Select(o => (Offer: o, Left: Length.FromFeet(o.PackSize), Pieces: new List<CutPiece>())).ToArray();
        foreach (var piece in pieces)
        {
            var best = -1;
            for (var c = 0; c < coils.Length; c++)
            {
                if (coils[c].Left >= piece.Length && (best < 0 || coils[c].Left < coils[best].Left))
                {
                    best = c;
                }
            }

            if (best < 0)
            {
                return null;
            }

            coils[best].Left -= piece.Length;
            coils[best].Pieces.Add(piece);
        }

        return [.. coils.Where(c => c.Pieces.Count > 0).Select(c => new CutCoil(c.Offer, [.. c.Pieces]))];
    }

    private static IEnumerable<CutCoil> Fill(List<CutPiece> pieces, List<Offer> offers)
    {
        var longest = offers[^1];
        var bins = new List<(Length Used, List<CutPiece> Pieces)>();
        foreach (var piece in pieces)
        {
            var bin = bins.FindIndex(b => b.Used + piece.Length <= Length.FromFeet(longest.PackSize));
            if (bin < 0)
            {
                bins.Add((piece.Length, [piece]));
            }
            else
            {
                bins[bin].Pieces.Add(piece);
                bins[bin] = (bins[bin].Used + piece.Length, bins[bin].Pieces);
            }
        }

        return bins.Select(b => new CutCoil(
            offers.Where(o => Length.FromFeet(o.PackSize) >= b.Used).OrderBy(o => o.Price).ThenBy(o => o.PackSize).First(), [.. b.Pieces]));
    }
}
