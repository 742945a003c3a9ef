using System.Collections.Immutable;
using Estimator.Engine.Controls;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Joints;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Makes the units of a group: their inner cables, where the feed comes in and where it may go on, and what each device connects to.</summary>
internal sealed class UnitMaking
{
    private readonly HouseLayout _layout;
    private readonly ControlPlan _controls;
    private readonly ImmutableArray<DraftBox> _drafts;
    private readonly UnitCosts _costs;
    private readonly EntryLimits _limits;
    private readonly WireSize _wire;

    internal UnitMaking(HouseLayout layout, ControlPlan controls, ImmutableArray<DraftBox> drafts, UnitCosts costs, EntryLimits limits, WireSize wire) =>
        (_layout, _controls, _drafts, _costs, _limits, _wire) = (layout, controls, drafts, costs, limits, wire);

    /// <summary>The ways in which the boxes of a unit can be wired; the first serves where nothing is chosen.</summary>
    internal ImmutableArray<WiringUnit> Ways(ImmutableArray<int> boxes, CircuitRating rating)
    {
        ImmutableArray<int> groups = [.. Enumerable.Range(0, _controls.Groups.Length)
            .Where(g => _controls.Groups[g].Switches.Any(s => boxes.Any(b => _drafts[b].Devices.Contains(s))))];
        return groups.IsEmpty ? [Unswitched(boxes, rating)] : Switched(boxes, groups);
    }

    private ImmutableArray<WiringUnit> Switched(ImmutableArray<int> boxes, ImmutableArray<int> groups)
    {
        var control = new ControlBoxes(_layout, _controls, _drafts, boxes, groups);
        var atSwitch = AtSwitch(boxes, control);
        var wanted = _layout.House.Job.Practice.ControlFeed ?? ControlFeed.Cheaper;
        if (wanted is ControlFeed.AtSwitch)
        {
            return [atSwitch];
        }

        ImmutableArray<WiringUnit> atLight = [.. LightFeeds.Of(_layout, control, _costs).Select(i => AtLight(boxes, control, i)).Where(Fits)];
        return _costs.NearestToPins(wanted is ControlFeed.AtLight && !atLight.IsEmpty ? atLight : [atSwitch, .. atLight]);
    }

    private WiringUnit AtSwitch(ImmutableArray<int> boxes, ControlBoxes control)
    {
        var island = new SwitchFedIsland(control, _costs.Panel, _costs.Between);
        var legs = island.Legs();
        var terminals = island.SwitchTerminals().Concat(LoadTerminals(control, island.NeutralAt));
        return Finish(boxes, island.Entry, island.Exports, legs, terminals) with { NeutralOrigins = island.NeutralOrigins };
    }

    private WiringUnit AtLight(ImmutableArray<int> boxes, ControlBoxes control, LightFedIsland island)
    {
        var terminals = control.SwitchTerminals(_ => 0).Concat(LoadTerminals(control, _ => Net.Neutral));
        return Finish(boxes, island.Entry, island.Exports, island.Legs, terminals) with
        {
            NeutralOrigins = control.Groups.ToImmutableSortedDictionary(g => g, _ => control.Switches[0]),
        };
    }

    private IEnumerable<Terminal> LoadTerminals(ControlBoxes control, Func<int, Net> neutralAt) => control.Loads.Concat(control.Switches)
        .SelectMany(b => _drafts[b].Devices.Where(d => !_layout.Devices[d].Kind.IsSwitch()).SelectMany(d => Loads(d, control.Groups, neutralAt(b))));

    private bool Fits(WiringUnit unit) => unit.Boxes.All(b => _limits.Hold(_drafts[b], unit.Legs, b == unit.Entry, _wire));

    private WiringUnit Unswitched(ImmutableArray<int> boxes, CircuitRating rating)
    {
        var entry = boxes.MinBy(b => _costs.Between(_costs.Panel, b));
        var interconnect = boxes.Length > 1;
        var legs = SpanningTree.From(entry, boxes, _costs.Between, b => LoadRoom.Of(_drafts[b]) - 1)
            .Select(e => new CableLeg(e.From, e.To, RunRole.Interconnect, [Net.Hot, Net.Interconnect, Net.Neutral]));
        var terminals = boxes.SelectMany(b => _drafts[b].Devices).SelectMany(d => Plain(d, interconnect));
        if (_drafts[boxes[0]].Equipment is >= 0 and var equipment)
        {
            var unit = Finish(boxes, entry, boxes, [], []);
            var lead = _layout.Equipment[equipment].Connection is Connection.HardWired;
            return unit with
            {
                Exits = rating.Poles == 1 ? unit.Exits : [],
                Terminals = unit.Terminals.SetItem(entry, OfFeed(rating, -1, lead)),
            };
        }

        var made = Finish(boxes, entry, boxes, [.. legs], terminals);
        return rating.Poles == 1
            ? made
            : made with { Exits = [], Terminals = made.Terminals.SetItem(entry, OfFeed(rating, _drafts[entry].Devices[0], lead: false)) };
    }

    /// <summary>The nets of the feeding cable of a circuit.</summary>
    internal static ImmutableArray<Net> FeedNets(CircuitRating rating) => (rating.Poles, rating.Conductors) switch
    {
        (1, _) => [Net.Hot, Net.Neutral],
        (_, 2) => [Net.Hot, Net.SecondHot],
        _ => [Net.Hot, Net.SecondHot, Net.Neutral],
    };

    // What a 240 V receptacle or a piece of equipment connects to: all that its feed brings.
    private static ImmutableArray<Terminal> OfFeed(CircuitRating rating, int device, bool lead) =>
        [.. FeedNets(rating).Append(Net.Ground).Select(n => new Terminal(device, NameOf(n), n, lead))];

    private static TerminalName NameOf(Net net) => net.Function switch
    {
        ConductorFunction.Hot when net == Net.SecondHot => TerminalName.SecondHot,
        ConductorFunction.Hot => TerminalName.Hot,
        ConductorFunction.Neutral => TerminalName.Neutral,
        ConductorFunction.Ground => TerminalName.Ground,
        _ => throw new InvalidOperationException($"A feed brings no {net.Function} conductor."),
    };

    private WiringUnit Finish(
        ImmutableArray<int> boxes, int entry, ImmutableArray<int> exports, ImmutableArray<CableLeg> legs, IEnumerable<Terminal> terminals)
    {
        var boxOf = boxes.SelectMany(b => _drafts[b].Devices.Select(d => (d, b))).ToDictionary(x => x.d, x => x.b);
        var byBox = terminals.GroupBy(t => boxOf[t.Device]).ToDictionary(g => g.Key, g => g.ToImmutableArray());
        return new WiringUnit
        {
            Boxes = boxes,
            Entry = entry,
            Exits = [.. exports.Select(b => new FeedExit(b, _limits.Leaving(_drafts[b], legs, b == entry, _wire)))],
            Legs = legs,
            InnerE4 = legs.Sum(_costs.Of),
            Terminals = boxes.ToImmutableSortedDictionary(b => b, b => byBox.GetValueOrDefault(b, [])),
            Outlets = boxes.Sum(b => BoxOutlets.Count(_layout, _drafts[b])),
            LoadVa = boxes.Sum(b => BoxOutlets.LoadVa(_layout, _drafts[b])),
            Rooms = [.. boxes.Select(b => _drafts[b].Place.Room).Distinct().Order()],
        };
    }

    private IEnumerable<Terminal> Loads(int device, ImmutableArray<int> groups, Net neutral)
    {
        var kind = _layout.Devices[device].Kind;
        var lead = !kind.IsReceptacle();
        foreach (var (part, name) in Parts(kind))
        {
            var acting = groups.Where(g => _controls.Groups[g].Loads.Any(l => l.Device == device && (l.Part == part || l.Part is LoadPart.Whole))).ToList();
            yield return new Terminal(device, name, acting.Count > 0 ? Net.Switched(acting[0]) : Net.Hot, lead);
        }

        if (kind is DeviceKind.HalfHotReceptacle)
        {
            yield return new Terminal(device, TerminalName.Hot, Net.Hot, lead);
        }

        yield return new Terminal(device, TerminalName.Neutral, neutral, lead);
        yield return new Terminal(device, TerminalName.Ground, Net.Ground, lead);
    }

    private static IEnumerable<(LoadPart Part, TerminalName Name)> Parts(DeviceKind kind) => kind switch
    {
        DeviceKind.CeilingFan => [(LoadPart.Fan, TerminalName.Hot), (LoadPart.Light, TerminalName.FanLight)],
        DeviceKind.HalfHotReceptacle => [(LoadPart.SwitchedHalf, TerminalName.SwitchedHalf)],
        _ => [(LoadPart.Whole, TerminalName.Hot)],
    };

    private IEnumerable<Terminal> Plain(int device, bool interconnect)
    {
        var kind = _layout.Devices[device].Kind;
        var lead = !kind.IsReceptacle();
        foreach (var (_, name) in Parts(kind).Where(p => p.Part is not LoadPart.SwitchedHalf).DefaultIfEmpty((LoadPart.Whole, TerminalName.Hot)))
        {
            yield return new Terminal(device, name, Net.Hot, lead);
        }

        yield return new Terminal(device, TerminalName.Neutral, Net.Neutral, lead);
        yield return new Terminal(device, TerminalName.Ground, Net.Ground, lead);
        if (interconnect && kind.IsAlarm())
        {
            yield return new Terminal(device, TerminalName.Interconnect, Net.Interconnect, lead);
        }
    }
}
