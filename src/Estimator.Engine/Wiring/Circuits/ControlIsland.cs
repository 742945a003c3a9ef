using System.Collections.Immutable;
using Estimator.Engine.Controls;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>The cables inside a unit of controls: the feed comes to the switches, travellers run from switch box to switch box, switched legs go on to the loads.</summary>
/// <remarks>
/// Every switch box so gets a neutral, which meets 404.2(C) in each edition. Each cable has its own neutral beside its travellers, so all
/// conductors of a circuit stay in one cable, 300.3(B).
/// </remarks>
internal sealed class ControlIsland
{
    private readonly HouseLayout _layout;
    private readonly ControlPlan _controls;
    private readonly ImmutableArray<DraftBox> _drafts;
    private readonly ImmutableArray<int> _boxes;
    private readonly ImmutableArray<int> _groups;
    private readonly Func<int, int, long> _cost;
    private readonly Dictionary<int, int> _boxOf;
    private readonly ImmutableArray<int> _path;
    private readonly Dictionary<int, int> _position;
    private readonly List<CableLeg> _legs = [];
    private int _hotTo;

    internal ControlIsland(
        HouseLayout layout, ControlPlan controls, ImmutableArray<DraftBox> drafts, ImmutableArray<int> boxes, ImmutableArray<int> groups, int panel,
        Func<int, int, long> cost)
    {
        (_layout, _controls, _drafts, _boxes, _groups, _cost) = (layout, controls, drafts, boxes, groups, cost);
        _boxOf = boxes.SelectMany(b => drafts[b].Devices.Select(d => (Device: d, Box: b))).ToDictionary(x => x.Device, x => x.Box);
        var switchBoxes = boxes.Where(b => drafts[b].Devices.Any(d => layout.Devices[d].Kind.IsSwitch())).ToImmutableArray();
        _path = SwitchPath.Order(switchBoxes, panel, cost);
        _position = _path.Select((b, i) => (b, i)).ToDictionary(x => x.b, x => x.i);
    }

    /// <summary>The feed's first box.</summary>
    internal int Entry => _path[0];

    /// <summary>Boxes with an unswitched hot.</summary>
    internal ImmutableArray<int> Exports { get; private set; } = [];

    /// <summary>The cables, feed and travellers first.</summary>
    internal ImmutableArray<CableLeg> Legs()
    {
        _hotTo = _groups.Select(g => Position(InRow(g)[0])).DefaultIfEmpty(0).Max();
        AlongThePath();
        foreach (var sameControls in LoadBoxes().GroupBy(b => string.Join(',', GroupsActingOn(b))).OrderBy(g => g.Min()))
        {
            ToLoads([.. sameControls.Order()]);
        }

        Exports = [.. _path.Take(_hotTo + 1), .. LoadBoxes().Where(NeedsHot)];
        return [.. _legs];
    }

    /// <summary>What the switches of a group connect to, by device.</summary>
    internal IEnumerable<(int Device, Terminal Terminal)> SwitchTerminals()
    {
        foreach (var g in _groups)
        {
            var row = InRow(g);
            for (var i = 0; i < row.Length; i++)
            {
                yield return (row[i], new Terminal(i == 0 ? Net.Hot : Net.Traveller(g, 2 * i - 2), Lead: false));
                yield return (row[i], new Terminal(i == row.Length - 1 ? Net.Switched(g) : Net.Traveller(g, 2 * i), Lead: false));
                if (i > 0)
                {
                    yield return (row[i], new Terminal(Net.Traveller(g, 2 * i - 1), Lead: false));
                }

                if (i < row.Length - 1)
                {
                    yield return (row[i], new Terminal(Net.Traveller(g, 2 * i + 1), Lead: false));
                }
            }
        }
    }

    private void AlongThePath()
    {
        for (var i = 0; i + 1 < _path.Length; i++)
        {
            if (i < _hotTo)
            {
                _legs.Add(new CableLeg(_path[i], _path[i + 1], RunRole.Feed, [Net.Hot, Net.Neutral]));
            }

            foreach (var g in _groups)
            {
                var row = InRow(g);
                var pair = row.TakeWhile(s => Position(s) <= i).Count();
                if (pair > 0 && pair < row.Length)
                {
                    _legs.Add(new CableLeg(
                        _path[i], _path[i + 1], RunRole.Travellers, [Net.Traveller(g, 2 * pair - 2), Net.Traveller(g, 2 * pair - 1), Net.Neutral]));
                }
            }
        }
    }

    private void ToLoads(ImmutableArray<int> loads)
    {
        var groups = GroupsActingOn(loads[0]);
        var legBox = groups.Select(g => _path[LastPosition(g)]).Distinct().Order().MinBy(b => loads.Min(l => _cost(b, l)));
        foreach (var g in groups)
        {
            BringLeg(g, _position[legBox]);
        }

        List<Net> nets = [.. groups.Select(Net.Switched)];
        if (loads.Any(NeedsHot))
        {
            nets.Insert(0, Net.Hot);
            BringHot(_position[legBox]);
        }

        // One leg leaves the switch box, however many lights hang on it: a switch box is the one that overfills.
        var first = loads.MinBy(l => _cost(legBox, l));
        foreach (var (from, to) in SpanningTree.From(first, loads, _cost, Room).Prepend((From: legBox, To: first)))
        {
            // One neutral and at most two other conductors go in one cable.
            foreach (var pair in nets.Chunk(2))
            {
                _legs.Add(new CableLeg(from, to, RunRole.SwitchedLeg, [.. pair, Net.Neutral]));
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
            _legs.Add(new CableLeg(_path[i], _path[i + step], RunRole.SwitchedLeg, [Net.Switched(group), Net.Neutral]));
        }
    }

    private void BringHot(int to)
    {
        for (; _hotTo < to; _hotTo++)
        {
            _legs.Add(new CableLeg(_path[_hotTo], _path[_hotTo + 1], RunRole.Feed, [Net.Hot, Net.Neutral]));
        }
    }

    private int LastPosition(int group) => Position(InRow(group)[^1]);

    private ImmutableArray<int> InRow(int group) => [.. _controls.Groups[group].Switches.OrderBy(Position).ThenBy(s => s)];

    private int Position(int device) => _position[_boxOf[device]];

    private IEnumerable<int> LoadBoxes() => _boxes.Where(b => !_position.ContainsKey(b));

    private bool NeedsHot(int box) => _drafts[box].Devices.Any(d => _layout.Devices[d].Kind is DeviceKind.HalfHotReceptacle);

    private int Room(int box) => LoadRoom.Of(_drafts[box]);

    private ImmutableArray<int> GroupsActingOn(int box) =>
        [.. _groups.Where(g => _controls.Groups[g].Loads.Any(l => _drafts[box].Devices.Contains(l.Device)))];
}
