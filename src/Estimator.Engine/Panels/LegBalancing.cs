using System.Collections.Immutable;

namespace Estimator.Engine.Panels;

/// <summary>Divides one-pole loads between two legs so that the legs are as even as their spaces allow.</summary>
/// <remarks>
/// Two-pole breakers load both legs alike and don't enter. Every sum that a number of breakers on leg A can come to is followed (<see cref="LegSums"/>), the heaviest load first,
/// so the answer is the best of all divisions; only where the loads are too great to count exactly are they rounded, and the bound then says less.
/// </remarks>
public static class LegBalancing
{
    private const long MostUnits = 400_000;

    /// <summary>The most even division.</summary>
    /// <param name="loads">Loads in whole volt-amperes.</param>
    /// <param name="fixedDifference">Leg A less leg B of what cannot be moved.</param>
    /// <param name="leastOnA">Breakers that must stand on leg A at least, since leg B has no more spaces.</param>
    /// <param name="mostOnA">Breakers that leg A has spaces for.</param>
    /// <exception cref="ArgumentOutOfRangeException">The spaces do not take the breakers.</exception>
    public static LegSplit Split(IReadOnlyList<long> loads, long fixedDifference, int leastOnA, int mostOnA)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(leastOnA, mostOnA);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(leastOnA, loads.Count);
        var order = Enumerable.Range(0, loads.Count).OrderByDescending(i => loads[i]).ThenBy(i => i).ToArray();
        var unit = Math.Max(1, loads.Aggregate(0L, Gcd));
        var exact = loads.Sum() / unit <= MostUnits;
        unit = exact ? unit : (loads.Sum() / MostUnits) + 1;
        var sums = new LegSums([.. order.Select(i => (int)(loads[i] / unit))], Math.Min(mostOnA, loads.Count));
        var onA = Back(sums, order, Best(sums, fixedDifference, unit, leastOnA));
        var imbalance = Math.Abs(fixedDifference + loads.Select((l, i) => onA[i] ? l : -l).Sum());
        return new LegSplit(onA, imbalance, exact ? imbalance : Math.Min(imbalance, Simple(loads, fixedDifference)));
    }

    // What needs no search: the fixed part beyond all loads together, and a total that is odd can't be halved.
    private static long Simple(IReadOnlyList<long> loads, long fixedDifference) =>
        Math.Max(Math.Abs(fixedDifference) - loads.Sum(), Math.Abs(loads.Sum() + fixedDifference) % 2);

    // The least difference; of equal ones that with as many breakers on either leg, then with more on leg A.
    private static (int OnA, int Sum) Best(LegSums sums, long fixedDifference, long unit, int leastOnA)
    {
        // The sum at which the legs are even, rounded down.
        var wanted = Math.Clamp((long)Math.Floor(((unit * (decimal)sums.Total) - fixedDifference) / (2 * unit)), 0, sums.Total);
        var (least, found) = (default((long, int, int, long)), (OnA: -1, Sum: 0));
        for (var onA = leastOnA; onA <= sums.MostOnA; onA++)
        {
            foreach (var sum in new[] { sums.Before(onA, (int)wanted), sums.After(onA, (int)wanted) })
            {
                if (sum >= 0)
                {
                    var difference = fixedDifference + (unit * ((2L * sum) - sums.Total));
                    var key = (Math.Abs(difference), Math.Abs((2 * onA) - sums.Count), -onA, difference);
                    (least, found) = found.OnA < 0 || key.CompareTo(least) < 0 ? (key, (onA, sum)) : (least, found);
                }
            }
        }

        return found;
    }

    private static ImmutableArray<bool> Back(LegSums sums, int[] order, (int OnA, int Sum) end)
    {
        var stands = new bool[order.Length];
        for (var i = order.Length - 1; i >= 0; i--)
        {
            var load = sums.Load(i);
            stands[order[i]] = end.OnA > 0 && end.Sum >= load && sums.Reached(i, end.OnA - 1, end.Sum - load);
            end = stands[order[i]] ? (end.OnA - 1, end.Sum - load) : end;
        }

        return [.. stands];
    }

    private static long Gcd(long a, long b) => b == 0 ? a : Gcd(b, a % b);
}
