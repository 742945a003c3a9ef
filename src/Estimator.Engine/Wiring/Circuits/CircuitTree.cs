using System.Collections.Immutable;
using Estimator.Engine.Wiring.Joints;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>The cables of a draft circuit as a tree from the panel, or from the box where it leaves a common home run: what each box hangs on, and how many outlets lie beyond it.</summary>
internal sealed class CircuitTree
{
    private readonly Dictionary<int, int> _parent = [];
    private readonly Dictionary<int, int> _beyond = [];

    internal CircuitTree(DraftCircuit circuit, int panel, Func<int, int> outletsAt)
    {
        Legs = [.. circuit.Feed.Links.Select(l => Link(circuit, l, panel)), .. circuit.Units.SelectMany(u => u.Legs)];
        foreach (var leg in Legs.Where(l => l.To != circuit.Units[circuit.Feed.Links[0].Unit].Entry || l.From == panel))
        {
            _parent.TryAdd(leg.To, leg.From);
        }

        Boxes = [.. circuit.Feed.Links.SelectMany(l => circuit.Units[l.Unit].Boxes.OrderBy(b => b != circuit.Units[l.Unit].Entry))];
        foreach (var box in Boxes)
        {
            foreach (var above in Up(box, panel))
            {
                _beyond[above] = _beyond.GetValueOrDefault(above) + outletsAt(box);
            }
        }
    }

    /// <summary>Every cable, those of the feed first.</summary>
    internal ImmutableArray<CableLeg> Legs { get; }

    /// <summary>The boxes, the first in chain first.</summary>
    internal ImmutableArray<int> Boxes { get; }

    /// <summary>Outlets fed through the cable that enters a box.</summary>
    internal int OutletsThrough(int box) => _beyond.GetValueOrDefault(box);

    /// <summary>The box and those that it hangs on, up to the panel, which is left out.</summary>
    internal IEnumerable<int> Up(int box, int panel)
    {
        for (var at = box; at != panel; at = _parent.GetValueOrDefault(at, panel))
        {
            yield return at;
        }
    }

    /// <summary>What the box hangs on.</summary>
    internal int ParentOf(int box) => _parent[box];

    /// <summary>Cables that meet the first box: the circuit's own, and the one on which the other circuit of a pair leaves.</summary>
    /// <param name="circuit">The circuit.</param>
    internal ImmutableArray<CableLeg> LegsWithPartner(DraftCircuit circuit) => circuit.Shared?.PartnerEntry is { } entry
        ? Legs.Add(new CableLeg(Boxes[0], entry, RunRole.Feed, [Net.SecondHot, Net.Neutral]))
        : Legs;

    private static CableLeg Link(DraftCircuit circuit, FeedLink link, int root)
    {
        var nets = UnitMaking.FeedNets(circuit.Rating);
        return link.From != root ? new CableLeg(link.From, circuit.Units[link.Unit].Entry, RunRole.Feed, nets)
            : circuit.Shared is not { } shared ? new CableLeg(root, circuit.Units[link.Unit].Entry, RunRole.HomeRun, nets)
            : shared.JoinedAt is null ? new CableLeg(root, circuit.Units[link.Unit].Entry, RunRole.HomeRun, [Net.Hot, Net.SecondHot, Net.Neutral])
            : new CableLeg(root, circuit.Units[link.Unit].Entry, RunRole.Feed, nets);
    }
}
