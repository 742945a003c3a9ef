using System.Collections.Immutable;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Divides the units of a group among circuits: savings first, then a local search that moves and swaps units while the planning cost falls.</summary>
/// <remarks>
/// Savings after "Scheduling of vehicles from a central depot to a number of delivery points", Operations Research 12(4), 1964 (from memory), with
/// open ends. Each step is taken in canonical order and only when the cost falls, so the result is the cheapest plan that was looked at.
/// </remarks>
/// <param name="count">How many units there are.</param>
/// <param name="cost">Cost of a circuit of some units, in ascending order; null where they may not stand on one circuit.</param>
/// <param name="least">Circuits at least, as far as there are units.</param>
/// <param name="passes">Passes of the local search at most.</param>
internal sealed class CircuitSearch(int count, Func<ImmutableArray<int>, long?> cost, int least, int passes)
{
    private readonly Dictionary<string, long?> _known = new(StringComparer.Ordinal);

    /// <summary>Every plan that was the best when it was found, in order; the last is the answer.</summary>
    internal List<ImmutableArray<ImmutableArray<int>>> Visited { get; } = [];

    /// <summary>The circuits, each a set of units in ascending order.</summary>
    internal ImmutableArray<ImmutableArray<int>> Divide()
    {
        var circuits = Savings();
        Note(circuits);
        for (var pass = 0; pass < passes && (Move(circuits) || Swap(circuits)); pass++)
        {
            Note(circuits);
        }

        return Visited[^1];
    }

    private List<ImmutableArray<int>> Savings()
    {
        var circuits = Enumerable.Range(0, count).Select(u => ImmutableArray.Create(u)).ToList();
        while (circuits.Count > least)
        {
            var best = (Saving: 0L, A: -1, B: -1, Joined: ImmutableArray<int>.Empty);
            for (var a = 0; a < circuits.Count; a++)
            {
                for (var b = a + 1; b < circuits.Count; b++)
                {
                    var joined = Join(circuits[a], circuits[b]);
                    if (CostOf(joined) is { } together && CostOf(circuits[a])!.Value + CostOf(circuits[b])!.Value - together is var saving && saving > best.Saving)
                    {
                        best = (saving, a, b, joined);
                    }
                }
            }

            if (best.A < 0)
            {
                break;
            }

            circuits[best.A] = best.Joined;
            circuits.RemoveAt(best.B);
        }

        return circuits;
    }

    private bool Move(List<ImmutableArray<int>> circuits)
    {
        var moved = false;
        for (var unit = 0; unit < count; unit++)
        {
            var from = circuits.FindIndex(c => c.Contains(unit));
            var without = circuits[from].Remove(unit);
            if (without.IsEmpty && circuits.Count <= least)
            {
                continue;
            }

            var freed = CostOf(circuits[from])!.Value - (without.IsEmpty ? 0 : CostOf(without)!.Value);
            var best = (Gain: 0L, To: -1);
            for (var to = 0; to < circuits.Count; to++)
            {
                if (to != from && CostOf(Join(circuits[to], [unit])) is { } with && freed - (with - CostOf(circuits[to])!.Value) is var gain && gain > best.Gain)
                {
                    best = (gain, to);
                }
            }

            if (best.To >= 0)
            {
                circuits[best.To] = Join(circuits[best.To], [unit]);
                circuits[from] = without;
                circuits.RemoveAll(c => c.IsEmpty);
                moved = true;
            }
        }

        return moved;
    }

    private bool Swap(List<ImmutableArray<int>> circuits)
    {
        for (var a = 0; a < circuits.Count; a++)
        {
            for (var b = a + 1; b < circuits.Count; b++)
            {
                if (SwapBetween(circuits, a, b))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private bool SwapBetween(List<ImmutableArray<int>> circuits, int a, int b)
    {
        var now = CostOf(circuits[a])!.Value + CostOf(circuits[b])!.Value;
        foreach (var x in circuits[a])
        {
            foreach (var y in circuits[b])
            {
                var (newA, newB) = (Join(circuits[a].Remove(x), [y]), Join(circuits[b].Remove(y), [x]));
                if (CostOf(newA) is { } costA && CostOf(newB) is { } costB && costA + costB < now)
                {
                    (circuits[a], circuits[b]) = (newA, newB);
                    return true;
                }
            }
        }

        return false;
    }

    private void Note(List<ImmutableArray<int>> circuits) => Visited.Add([.. circuits.OrderBy(c => c[0])]);

    private long? CostOf(ImmutableArray<int> members)
    {
        var key = string.Join(',', members);
        if (!_known.TryGetValue(key, out var known))
        {
            known = cost(members);
            _known.Add(key, known);
        }

        return known;
    }

    private static ImmutableArray<int> Join(ImmutableArray<int> a, ImmutableArray<int> b) => [.. a.Concat(b).Order()];
}
