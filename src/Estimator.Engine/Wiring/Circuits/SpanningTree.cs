using System.Collections.Immutable;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Grows the cheapest tree over nodes from a root, one nearest node at a time.</summary>
internal static class SpanningTree
{
    /// <summary>The edges, each from the tree outward, in the order in which they were added.</summary>
    internal static ImmutableArray<(int From, int To)> From(int root, IEnumerable<int> nodes, Func<int, int, long> cost)
    {
        var rest = nodes.Where(n => n != root).ToList();
        var nearest = rest.ToDictionary(n => n, n => (Node: root, Cost: cost(root, n)));
        var edges = ImmutableArray.CreateBuilder<(int, int)>(rest.Count);
        while (rest.Count > 0)
        {
            var next = rest.MinBy(n => nearest[n].Cost);
            rest.Remove(next);
            edges.Add((nearest[next].Node, next));
            foreach (var n in rest)
            {
                var c = cost(next, n);
                if (c < nearest[n].Cost)
                {
                    nearest[n] = (next, c);
                }
            }
        }

        return edges.ToImmutable();
    }
}
