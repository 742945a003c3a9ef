using System.Collections.Immutable;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Grows the feed of one circuit, one nearest unit at a time, as far as boxes have room for another cable.</summary>
/// <remarks>What a way of wiring a unit costs inside counts with the link that feeds it, so feed and way are chosen together.</remarks>
/// <param name="units">All units of the group, each in its ways.</param>
/// <param name="panel">The panel's node.</param>
/// <param name="cost">Cost of feeding a box from a node.</param>
/// <param name="panelEntryE4">Cost of a cable's entry into the panel.</param>
internal sealed class FeedGrowth(
    ImmutableArray<ImmutableArray<WiringUnit>> units, int panel, Func<int, int, long> cost, long panelEntryE4)
{
    private readonly ImmutableArray<FeedLink>.Builder _links = ImmutableArray.CreateBuilder<FeedLink>();
    private readonly Dictionary<int, int> _used = [];
    private readonly Dictionary<int, int> _most = [];
    private readonly Dictionary<int, (int From, int Way, long Cost)> _nearest = [];

    internal FeedTree Grow(IReadOnlyList<int> members, int first)
    {
        var rest = members.ToList();
        var total = 0L;
        foreach (var unit in rest)
        {
            _nearest[unit] = unit == first ? FromPanel(unit, 0) : FromPanel(unit);
        }

        while (rest.Count > 0)
        {
            var next = _links.Count == 0 && first >= 0 ? first : rest.MinBy(u => _nearest[u].Cost);
            rest.Remove(next);
            total += _nearest[next].Cost;
            Add(next);
            Renew(rest, first >= 0);
        }

        return new FeedTree(_links.ToImmutable(), total);
    }

    internal (int From, int Way, long Cost) FromPanel(int unit) => Nearer((panel, 0, long.MaxValue), panel, unit);

    private (int From, int Way, long Cost) FromPanel(int unit, int way) => (panel, way, Cost(panel, unit, way));

    private long Cost(int node, int unit, int way) =>
        cost(node, units[unit][way].Entry) + units[unit][way].InnerE4 + (node == panel ? panelEntryE4 : 0);

    private void Add(int unit)
    {
        var (from, way, _) = _nearest[unit];
        _links.Add(new FeedLink(from, unit, way));
        if (from != panel)
        {
            _used[from] = _used.GetValueOrDefault(from) + 1;
        }

        foreach (var exit in units[unit][way].Exits)
        {
            _most[exit.Box] = exit.Cables;
        }
    }

    private void Renew(List<int> rest, bool alone)
    {
        var added = _links[^1];
        var full = added.From != panel && !HasRoom(added.From);
        foreach (var unit in rest)
        {
            if ((full && _nearest[unit].From == added.From) || (alone && _nearest[unit].From == panel))
            {
                _nearest[unit] = Nearest(unit, alone);
                continue;
            }

            foreach (var exit in units[added.Unit][added.Way].Exits.Where(e => HasRoom(e.Box)))
            {
                _nearest[unit] = Nearer(_nearest[unit], exit.Box, unit);
            }
        }
    }

    private bool HasRoom(int box) => _used.GetValueOrDefault(box) < _most[box];

    private (int From, int Way, long Cost) Nearer((int From, int Way, long Cost) best, int node, int unit)
    {
        for (var way = 0; way < units[unit].Length; way++)
        {
            if (Cost(node, unit, way) is var c && c < best.Cost)
            {
                best = (node, way, c);
            }
        }

        return best;
    }

    // Where no box has room left, the nearest takes one more: its fill is then found out and said.
    private (int From, int Way, long Cost) Nearest(int unit, bool alone)
    {
        var best = alone ? (From: panel, Way: 0, Cost: long.MaxValue) : FromPanel(unit);
        foreach (var anyBox in new[] { false, true })
        {
            foreach (var exit in _links.SelectMany(l => units[l.Unit][l.Way].Exits).Where(e => anyBox || HasRoom(e.Box)))
            {
                best = Nearer(best, exit.Box, unit);
            }

            if (best.Cost < long.MaxValue)
            {
                return best;
            }
        }

        return FromPanel(unit);
    }
}
