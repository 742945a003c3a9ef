using System.Collections.Immutable;
using Estimator.Engine.Controls;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Makes the units of a group: their inner cables, where the feed comes in and where it may go on, and what each device connects to.</summary>
internal sealed class UnitMaking(
    HouseLayout layout, ControlPlan controls, ImmutableArray<DraftBox> drafts, int panel, Func<int, int, long> cost)
{
    internal WiringUnit Make(ImmutableArray<int> boxes, CircuitRating rating)
    {
        ImmutableArray<int> groups = [.. Enumerable.Range(0, controls.Groups.Length)
            .Where(g => controls.Groups[g].Switches.Any(s => boxes.Any(b => drafts[b].Devices.Contains(s))))];
        return groups.IsEmpty ? Unswitched(boxes, rating) : Switched(boxes, groups);
    }

    private WiringUnit Switched(ImmutableArray<int> boxes, ImmutableArray<int> groups)
    {
        var island = new ControlIsland(layout, controls, drafts, boxes, groups, panel, cost);
        var legs = island.Legs();
        var terminals = island.SwitchTerminals().Concat(boxes.SelectMany(b => drafts[b].Devices).SelectMany(d => Loads(d, groups)));
        return Finish(boxes, island.Entry, island.Exports, legs, terminals);
    }

    private WiringUnit Unswitched(ImmutableArray<int> boxes, CircuitRating rating)
    {
        var entry = boxes.MinBy(b => cost(panel, b));
        var interconnect = boxes.Length > 1;
        var legs = SpanningTree.From(entry, boxes, cost, b => LoadRoom.Of(drafts[b]) - 1)
            .Select(e => new CableLeg(e.From, e.To, RunRole.Interconnect, [Net.Hot, Net.Interconnect, Net.Neutral]));
        var terminals = boxes.SelectMany(b => drafts[b].Devices).SelectMany(d => Plain(d, interconnect));
        if (drafts[boxes[0]].Equipment is >= 0 and var equipment)
        {
            var unit = Finish(boxes, entry, [], [], []);
            var lead = layout.Equipment[equipment].Connection is Connection.HardWired;
            return unit with
            {
                Exports = rating.Poles == 1 ? boxes : [],
                Terminals = unit.Terminals.SetItem(entry, [.. FeedNets(rating).Append(Net.Ground).Select(n => new Terminal(n, lead))]),
            };
        }

        var made = Finish(boxes, entry, boxes, [.. legs], terminals);
        return rating.Poles == 1
            ? made
            : made with { Exports = [], Terminals = made.Terminals.SetItem(entry, [.. FeedNets(rating).Append(Net.Ground).Select(n => new Terminal(n, Lead: false))]) };
    }

    /// <summary>The nets of the feeding cable of a circuit.</summary>
    internal static ImmutableArray<Net> FeedNets(CircuitRating rating) => (rating.Poles, rating.Conductors) switch
    {
        (1, _) => [Net.Hot, Net.Neutral],
        (_, 2) => [Net.Hot, Net.SecondHot],
        _ => [Net.Hot, Net.SecondHot, Net.Neutral],
    };

    private WiringUnit Finish(
        ImmutableArray<int> boxes, int entry, ImmutableArray<int> exports, ImmutableArray<CableLeg> legs, IEnumerable<(int Device, Terminal Terminal)> terminals)
    {
        var boxOf = boxes.SelectMany(b => drafts[b].Devices.Select(d => (d, b))).ToDictionary(x => x.d, x => x.b);
        var byBox = terminals.GroupBy(t => boxOf[t.Device]).ToDictionary(g => g.Key, g => g.Select(t => t.Terminal).ToImmutableArray());
        return new WiringUnit
        {
            Boxes = boxes,
            Entry = entry,
            Exports = exports,
            Legs = legs,
            Terminals = boxes.ToImmutableSortedDictionary(b => b, b => byBox.GetValueOrDefault(b, [])),
            Outlets = boxes.Sum(Outlets),
            LoadVa = boxes.Sum(LoadVa),
            Rooms = [.. boxes.Select(b => drafts[b].Place.Room).Distinct().Order()],
        };
    }

    private int Outlets(int box) =>
        drafts[box].Equipment >= 0 ? 1 : drafts[box].Devices.Count(d => !layout.Devices[d].Kind.IsSwitch());

    private int LoadVa(int box) => drafts[box].Equipment is >= 0 and var equipment
        ? decimal.ToInt32(decimal.Ceiling(layout.Equipment[equipment].LoadVa.Value))
        : drafts[box].Devices.Sum(d => layout.Devices[d].Kind is var kind && (kind.IsLuminaireOrFan() || kind.IsAlarm()) ? decimal.ToInt32(LampLoads.For(kind).Number()) : 0);

    private IEnumerable<(int Device, Terminal Terminal)> Loads(int device, ImmutableArray<int> groups)
    {
        var kind = layout.Devices[device].Kind;
        if (kind.IsSwitch())
        {
            yield return (device, new Terminal(Net.Ground, Lead: false));
            if (kind is DeviceKind.SensorSwitch)
            {
                yield return (device, new Terminal(Net.Neutral, Lead: false));
            }

            yield break;
        }

        var lead = !kind.IsReceptacle();
        foreach (var g in groups.Where(g => controls.Groups[g].Loads.Any(l => l.Device == device)))
        {
            yield return (device, new Terminal(Net.Switched(g), lead));
        }

        if (kind is DeviceKind.HalfHotReceptacle)
        {
            yield return (device, new Terminal(Net.Hot, lead));
        }

        yield return (device, new Terminal(Net.Neutral, lead));
        yield return (device, new Terminal(Net.Ground, lead));
    }

    private IEnumerable<(int Device, Terminal Terminal)> Plain(int device, bool interconnect)
    {
        var kind = layout.Devices[device].Kind;
        var lead = !kind.IsReceptacle();
        yield return (device, new Terminal(Net.Hot, lead));
        yield return (device, new Terminal(Net.Neutral, lead));
        yield return (device, new Terminal(Net.Ground, lead));
        if (interconnect && kind.IsAlarm())
        {
            yield return (device, new Terminal(Net.Interconnect, lead));
        }
    }
}
