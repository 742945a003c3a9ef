using System.Collections.Immutable;
using Estimator.Engine.Wiring.Joints;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>The cables inside a unit of controls that is fed at its switches: the feed comes to the switches, travellers run from switch box to switch box, switched legs go on to the loads.</summary>
/// <remarks>
/// Every switch box so gets a neutral, which meets 404.2(C) in each edition. Travellers have a neutral of their own in their cable, so all conductors of a
/// circuit stay in one cable, 300.3(B). It leaves the common neutral at the control's first switch and meets it nowhere again: neutrals form a tree, since
/// conductors as thin as these may not run in parallel, 310.10(G).
/// </remarks>
internal sealed class SwitchFedIsland
{
    private readonly ControlBoxes _boxes;
    private readonly Func<int, int, long> _cost;
    private readonly ImmutableArray<int> _path;
    private Dictionary<int, int> _position;
    private readonly List<CableLeg> _legs = [];
    private readonly Dictionary<int, Net> _neutralAt = [];
    private int _hotTo;

    internal SwitchFedIsland(ControlBoxes boxes, int panel, Func<int, int, long> cost)
    {
        (_boxes, _cost) = (boxes, cost);
        _path = SwitchPath.Order(boxes.Switches, cost, row => CostOf(row, panel));
        _position = Positions(_path);
    }

    /// <summary>The feed's first box.</summary>
    internal int Entry => _path[0];

    /// <summary>Boxes with an unswitched hot.</summary>
    internal ImmutableArray<int> Exports { get; private set; } = [];

    /// <summary>The cables, feed and travellers first.</summary>
    internal ImmutableArray<CableLeg> Legs()
    {
        _hotTo = _boxes.Groups.Select(g => Position(InRow(g)[0])).DefaultIfEmpty(0).Max();
        AlongThePath();
        foreach (var sameControls in _boxes.LoadsByControls())
        {
            ToLoads(sameControls);
        }

        Exports = [.. _path.Take(_hotTo + 1), .. _boxes.Loads.Where(_boxes.NeedsHot)];
        return [.. _legs];
    }

    /// <summary>By control, the box of its first switch.</summary>
    internal ImmutableSortedDictionary<int, int> NeutralOrigins => _boxes.Groups.ToImmutableSortedDictionary(g => g, Origin);

    /// <summary>The neutral that reaches the box of a load.</summary>
    internal Net NeutralAt(int box) => _neutralAt.GetValueOrDefault(box, Net.Neutral);

    /// <summary>What the switches connect to.</summary>
    internal IEnumerable<Terminal> SwitchTerminals() => _boxes.SwitchTerminals(Position);

    private void AlongThePath()
    {
        var legs = new List<(int Step, CableLeg Leg)>();
        for (var i = 0; i < _hotTo; i++)
        {
            legs.Add((i, new CableLeg(_path[i], _path[i + 1], RunRole.Feed, [Net.Hot, Net.Neutral])));
        }

        foreach (var g in _boxes.Groups)
        {
            legs.AddRange(Travellers(g, InRow(g)));
        }

        _legs.AddRange(legs.OrderBy(l => l.Step).Select(l => l.Leg));
    }

    // Travellers step from switch box to switch box. Where they double back, since a four-way stands beyond the last three-way, no second neutral goes along.
    private IEnumerable<(int Step, CableLeg Leg)> Travellers(int group, ImmutableArray<int> row)
    {
        var reached = new HashSet<int> { Position(row[0]) };
        for (var k = 0; k + 1 < row.Length; k++)
        {
            var to = Position(row[k + 1]);
            var step = Math.Sign(to - Position(row[k]));
            for (var i = Position(row[k]); i != to; i += step)
            {
                var neutral = reached.Add(i + step) ? Net.NeutralOf(group) : Net.Spare;
                yield return (Math.Min(i, i + step), new CableLeg(
                    _path[i], _path[i + step], RunRole.Travellers, [Net.Traveller(group, 2 * k), Net.Traveller(group, 2 * k + 1), neutral]));
            }
        }
    }

    private void ToLoads(ImmutableArray<int> loads)
    {
        var groups = _boxes.ActingOn(loads[0]);
        var legBox = groups.Select(g => _path[LastPosition(g)]).Distinct().Order().MinBy(b => loads.Min(l => _cost(b, l)));
        foreach (var g in groups)
        {
            BringLeg(g, _position[legBox]);
        }

        List<Net> nets = [.. groups.Select(Net.Switched)];
        if (loads.Any(_boxes.NeedsHot))
        {
            nets.Insert(0, Net.Hot);
            BringHot(_position[legBox]);
        }

        var neutral = NeutralFor(loads, groups, legBox);
        foreach (var load in loads)
        {
            _neutralAt[load] = neutral;
        }

        // One leg leaves the switch box, however many lights hang on it: a switch box is the one that overfills.
        var first = loads.MinBy(l => _cost(legBox, l));
        foreach (var (from, to) in SpanningTree.From(first, loads, _cost, _boxes.Room).Prepend((From: legBox, To: first)))
        {
            // One neutral and at most two other conductors go in one cable; a second cable to the same box lends its white to nothing.
            foreach (var (pair, i) in nets.Chunk(2).Select((p, i) => (p, i)))
            {
                _legs.Add(new CableLeg(from, to, RunRole.SwitchedLeg, [.. pair, i == 0 ? neutral : Net.Spare]));
            }
        }
    }

    // A second control whose last switch stands elsewhere sends its switched leg along the row of switch boxes.
    private void BringLeg(int group, int to)
    {
        var from = LastPosition(group);
        var step = Math.Sign(to - from);
        for (var i = from; i != to; i += step)
        {
            _legs.Add(new CableLeg(_path[i], _path[i + step], RunRole.SwitchedLeg, [Net.Switched(group), Net.Spare]));
        }
    }

    private void BringHot(int to)
    {
        for (; _hotTo < to; _hotTo++)
        {
            _legs.Add(new CableLeg(_path[_hotTo], _path[_hotTo + 1], RunRole.Feed, [Net.Hot, Net.Neutral]));
        }
    }

    // The neutral that came with the travellers goes on to the loads; with an unswitched hot goes the common one.
    private Net NeutralFor(ImmutableArray<int> loads, ImmutableArray<int> groups, int legBox)
    {
        var along = groups.First(g => _path[LastPosition(g)] == legBox);
        return loads.Any(_boxes.NeedsHot) || Origin(along) == legBox ? Net.Neutral : Net.NeutralOf(along);
    }

    private int Origin(int group) => _path[Position(InRow(group)[0])];

    private static Dictionary<int, int> Positions(ImmutableArray<int> path) => path.Select((b, i) => (b, i)).ToDictionary(x => x.b, x => x.i);

    // What a row of switch boxes asks for, every cable at one price: the feed of its first box, the hot along it, the travellers from switch to switch.
    private long CostOf(ImmutableArray<int> path, int panel)
    {
        _position = Positions(path);
        var along = new long[path.Length];
        for (var i = 1; i < path.Length; i++)
        {
            along[i] = along[i - 1] + _cost(path[i - 1], path[i]);
        }

        var rows = _boxes.Groups.Select(g => InRow(g).Select(s => along[Position(s)]).ToList()).ToList();
        return _cost(panel, path[0]) + rows.Max(r => r[0]) + rows.Sum(r => r.Zip(r.Skip(1), (a, b) => Math.Abs(b - a)).Sum());
    }

    private int LastPosition(int group) => Position(InRow(group)[^1]);

    private ImmutableArray<int> InRow(int group) => _boxes.InRow(group, Position);

    private int Position(int device) => _position[_boxes.BoxOf(device)];
}
