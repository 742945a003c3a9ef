using System.Collections.Immutable;

namespace Estimator.Engine.Panels;

/// <summary>Divides one-pole loads between two legs so that the legs are as even as their spaces allow.</summary>
/// <remarks>
/// Two-pole breakers load both legs alike and don't enter. Every reachable pair of a number of breakers on leg A and a difference of the legs is followed,
/// the heaviest load first, so the answer is the best of all divisions; only where a panel has more unlike loads than
/// <see cref="MostStates"/> pairs hold is the search cut, and the bound then says less.
/// </remarks>
public static class LegBalancing
{
    private const int MostStates = 200_000;

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
        var (layers, complete) = Reach(loads, order, fixedDifference, leastOnA, Math.Min(mostOnA, loads.Count));
        var end = layers[^1].MinBy(s => (Math.Abs(s.Difference), Math.Abs(2 * s.OnA - loads.Count), -s.OnA, s.Difference));
        var imbalance = Math.Abs(end.Difference);
        return new LegSplit(Back(loads, order, layers, end), imbalance, complete ? imbalance : Math.Min(imbalance, Simple(loads, fixedDifference)));
    }

    // What needs no search: the fixed part beyond all loads together, and a total that is odd can't be halved.
    private static long Simple(IReadOnlyList<long> loads, long fixedDifference) =>
        Math.Max(Math.Abs(fixedDifference) - loads.Sum(), Math.Abs(loads.Sum() + fixedDifference) % 2);

    private static (List<HashSet<State>> Layers, bool Complete) Reach(IReadOnlyList<long> loads, int[] order, long start, int leastOnA, int mostOnA)
    {
        var complete = true;
        var left = loads.Sum();
        var known = Known(loads, order, start, leastOnA, mostOnA);
        List<HashSet<State>> layers = [[new State(0, start)]];
        for (var i = 0; i < order.Length; i++)
        {
            var load = loads[order[i]];
            left -= load;
            var next = new HashSet<State>();
            foreach (var state in layers[^1])
            {
                if (state.OnA < mostOnA && Math.Abs(state.Difference + load) - left <= known)
                {
                    next.Add(new State(state.OnA + 1, state.Difference + load));
                }

                if (i + 1 - state.OnA <= order.Length - leastOnA && Math.Abs(state.Difference - load) - left <= known)
                {
                    next.Add(state with { Difference = state.Difference - load });
                }
            }

            if (next.Count > MostStates)
            {
                complete = false;
                next = [.. next.OrderBy(s => Math.Abs(s.Difference)).ThenBy(s => s.Difference).ThenBy(s => s.OnA).Take(MostStates / 2)];
            }

            layers.Add(next);
        }

        return (layers, complete);
    }

    // Each load on the lighter leg: an imbalance that can be had, so what can't come down to it any more is not followed.
    private static long Known(IReadOnlyList<long> loads, int[] order, long start, int leastOnA, int mostOnA)
    {
        var (onA, onB) = (0, 0);
        foreach (var i in order)
        {
            var toA = onA < mostOnA && (start <= 0 || onB >= order.Length - leastOnA);
            (onA, onB, start) = toA ? (onA + 1, onB, start + loads[i]) : (onA, onB + 1, start - loads[i]);
        }

        return Math.Abs(start);
    }

    private static ImmutableArray<bool> Back(IReadOnlyList<long> loads, int[] order, List<HashSet<State>> layers, State end)
    {
        var onA = new bool[loads.Count];
        for (var i = order.Length - 1; i >= 0; i--)
        {
            var load = loads[order[i]];
            var fromA = new State(end.OnA - 1, end.Difference - load);
            onA[order[i]] = layers[i].Contains(fromA);
            end = onA[order[i]] ? fromA : end with { Difference = end.Difference + load };
        }

        return [.. onA];
    }

    private readonly record struct State(int OnA, long Difference);
}
