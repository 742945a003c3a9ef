using System.Collections.Immutable;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Puts the switch boxes of a unit in a row, so that what passes from one to the next costs least.</summary>
internal static class SwitchPath
{
    /// <summary>The boxes in the order of the cheapest row found, the first to be fed first.</summary>
    /// <param name="boxes">The switch boxes.</param>
    /// <param name="cost">Cost of a cable between two boxes.</param>
    /// <param name="total">Cost of all that a row asks for: its feed, the unswitched hot along it, the travellers.</param>
    internal static ImmutableArray<int> Order(ImmutableArray<int> boxes, Func<int, int, long> cost, Func<ImmutableArray<int>, long> total) => boxes.Length < 2
        ? boxes
        : boxes.Select(start => Nearest(boxes, start, cost)).SelectMany(row => (ImmutableArray<int>[])[row, [.. row.Reverse()]])
            .Select(row => Improve(row, total)).MinBy(total);

    private static ImmutableArray<int> Nearest(ImmutableArray<int> boxes, int start, Func<int, int, long> cost)
    {
        var rest = boxes.Where(b => b != start).ToList();
        var row = ImmutableArray.CreateBuilder<int>(boxes.Length);
        row.Add(start);
        while (rest.Count > 0)
        {
            var next = rest.MinBy(b => cost(row[^1], b));
            rest.Remove(next);
            row.Add(next);
        }

        return row.MoveToImmutable();
    }

    // Turning a stretch round until no turn helps: enough for the handful of switch boxes of a house.
    private static ImmutableArray<int> Improve(ImmutableArray<int> row, Func<ImmutableArray<int>, long> total)
    {
        var least = total(row);
        for (var better = true; better;)
        {
            better = false;
            for (var i = 0; i < row.Length - 1; i++)
            {
                for (var j = i + 1; j < row.Length; j++)
                {
                    ImmutableArray<int> turned = [.. row[..i], .. row[i..(j + 1)].Reverse(), .. row[(j + 1)..]];
                    if (total(turned) is var cost && cost < least)
                    {
                        (row, least, better) = (turned, cost, true);
                    }
                }
            }
        }

        return row;
    }
}
