using System.Collections.Immutable;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Grows the feed of a circuit from the panel, one nearest unit at a time, as far as boxes have room for another cable.</summary>
/// <param name="units">All units of the group.</param>
/// <param name="panel">The panel's node.</param>
/// <param name="room">How many feeding cables may still leave a box.</param>
/// <param name="cost">Cost of feeding a box from a node.</param>
/// <param name="panelEntryE4">Cost of a cable's entry into the panel.</param>
internal sealed class FeedGrowing(
    ImmutableArray<WiringUnit> units, int panel, ImmutableArray<int> room, Func<int, int, long> cost, long panelEntryE4)
{
    /// <summary>The feed of a circuit.</summary>
    /// <param name="members">Its units.</param>
    /// <param name="first">The unit that must be fed from the panel and alone; -1 where any may and several can.</param>
    internal FeedTree Grow(IReadOnlyList<int> members, int first)
    {
        var links = ImmutableArray.CreateBuilder<FeedLink>(members.Count);
        var total = 0L;
        var rest = members.ToList();
        var used = new Dictionary<int, int>();
        var nearest = rest.ToDictionary(u => u, u => (From: panel, Cost: FromPanel(u)));
        while (rest.Count > 0)
        {
            var next = links.Count == 0 && first >= 0 ? first : rest.MinBy(u => nearest[u].Cost);
            rest.Remove(next);
            var (from, linkCost) = nearest[next];
            links.Add(new FeedLink(from, next));
            total += linkCost;
            if (from != panel)
            {
                used[from] = used.GetValueOrDefault(from) + 1;
            }

            Renew(links, rest, used, nearest, next, first >= 0);
        }

        var grown = new FeedTree(links.ToImmutable(), total);
        return first < 0 && Star(members) is var star && star.CostE4 < grown.CostE4 ? star : grown;
    }

    // Boxes that are nearly full can make the grown feed dearer than a run of its own from the panel to each unit; then those runs are taken.
    private FeedTree Star(IReadOnlyList<int> members) => new([.. members.Select(u => new FeedLink(panel, u))], members.Sum(FromPanel));

    private long FromPanel(int unit) => cost(panel, units[unit].Entry) + panelEntryE4;

    private void Renew(
        ImmutableArray<FeedLink>.Builder links, List<int> rest, Dictionary<int, int> used, Dictionary<int, (int From, long Cost)> nearest, int added, bool alone)
    {
        var from = links[^1].From;
        var full = from != panel && used[from] >= room[from];
        foreach (var u in rest)
        {
            if ((full && nearest[u].From == from) || (alone && nearest[u].From == panel))
            {
                nearest[u] = Nearest(links, used, u, alone);
                continue;
            }

            foreach (var export in units[added].Exports)
            {
                if (used.GetValueOrDefault(export) < room[export] && cost(export, units[u].Entry) is var c && c < nearest[u].Cost)
                {
                    nearest[u] = (export, c);
                }
            }
        }
    }

    // Where no box has room left, the nearest takes one more: its fill is then found out and said.
    private (int From, long Cost) Nearest(ImmutableArray<FeedLink>.Builder links, Dictionary<int, int> used, int unit, bool alone)
    {
        var best = alone ? (From: panel, Cost: long.MaxValue) : (From: panel, Cost: FromPanel(unit));
        foreach (var anyBox in new[] { false, true })
        {
            foreach (var export in links.SelectMany(l => units[l.Unit].Exports))
            {
                if ((anyBox || used.GetValueOrDefault(export) < room[export]) && cost(export, units[unit].Entry) is var c && c < best.Cost)
                {
                    best = (export, c);
                }
            }

            if (best.Cost < long.MaxValue)
            {
                return best;
            }
        }

        return (panel, FromPanel(unit));
    }
}
