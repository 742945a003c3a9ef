using System.Collections.Immutable;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Puts the switch boxes of a unit in a row, so that travellers pass from one to the next and never double back.</summary>
internal static class SwitchPath
{
    /// <summary>The boxes in the order of the cheapest row found; its first is the end nearer the panel.</summary>
    internal static ImmutableArray<int> Order(ImmutableArray<int> boxes, int panel, Func<int, int, long> cost)
    {
        if (boxes.Length < 2)
        {
            return boxes;
        }

        var best = boxes.Select(start => Nearest(boxes, start, cost)).Select(p => Improve(p, cost)).MinBy(p => CostOf(p, cost))!;
        return cost(panel, best[0]) <= cost(panel, best[^1]) ? [.. best] : [.. best.Reverse()];
    }

    private static int[] Nearest(ImmutableArray<int> boxes, int start, Func<int, int, long> cost)
    {
        var rest = boxes.Where(b => b != start).ToList();
        var path = new List<int> { start };
        while (rest.Count > 0)
        {
            var next = rest.MinBy(b => cost(path[^1], b));
            rest.Remove(next);
            path.Add(next);
        }

        return [.. path];
    }

    // Turning a stretch round until no turn helps: enough for the handful of switch boxes of a house.
    private static int[] Improve(int[] path, Func<int, int, long> cost)
    {
        for (var better = true; better;)
        {
            better = false;
            for (var i = 0; i < path.Length - 1; i++)
            {
                for (var j = i + 1; j < path.Length; j++)
                {
                    var turned = (int[])path.Clone();
                    Array.Reverse(turned, i, j - i + 1);
                    if (CostOf(turned, cost) < CostOf(path, cost))
                    {
                        (path, better) = (turned, true);
                    }
                }
            }
        }

        return path;
    }

    private static long CostOf(int[] path, Func<int, int, long> cost)
    {
        var total = 0L;
        for (var i = 1; i < path.Length; i++)
        {
            total += cost(path[i - 1], path[i]);
        }

        return total;
    }
}
