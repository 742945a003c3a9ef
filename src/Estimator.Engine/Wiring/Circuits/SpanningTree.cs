using System.Collections.Immutable;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Grows a cheap tree over nodes from a root, one nearest node at a time, no node joined to more others than it has room for.</summary>
internal static class SpanningTree
{
    /// <summary>The edges, each from the tree outward, in the order in which they were added.</summary>
    /// <param name="root">Where the tree starts.</param>
    /// <param name="nodes">The nodes; the root may be among them.</param>
    /// <param name="cost">Cost of an edge.</param>
    /// <param name="most">How many nodes may hang on a node; where all are full, the limit gives way.</param>
    internal static ImmutableArray<(int From, int To)> From(int root, IEnumerable<int> nodes, Func<int, int, long> cost, Func<int, int>? most = null)
    {
        var rest = nodes.Where(n => n != root).ToList();
        var tree = new List<int> { root };
        var hung = new Dictionary<int, int>();
        var edges = ImmutableArray.CreateBuilder<(int, int)>(rest.Count);
        while (rest.Count > 0)
        {
            var open = tree.Where(t => most is null || hung.GetValueOrDefault(t) < most(t)).ToList();
            var (from, to) = Cheapest(open.Count > 0 ? open : tree, rest, cost);
            edges.Add((from, to));
            hung[from] = hung.GetValueOrDefault(from) + 1;
            rest.Remove(to);
            tree.Add(to);
        }

        return edges.ToImmutable();
    }

    private static (int From, int To) Cheapest(List<int> tree, List<int> rest, Func<int, int, long> cost)
    {
        var best = (Cost: long.MaxValue, From: tree[0], To: rest[0]);
        foreach (var from in tree)
        {
            foreach (var to in rest)
            {
                var c = cost(from, to);
                if (c < best.Cost)
                {
                    best = (c, from, to);
                }
            }
        }

        return (best.From, best.To);
    }
}
