using System.Collections.Immutable;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;

namespace Estimator.Engine.Controls;

/// <summary>Proposes the controls of one room from its switches and loads.</summary>
/// <remarks>
/// Three-ways go in pairs with any four-ways between them and take the general lights first; single switches follow, one for each family of loads.
/// Source: common practice, no source.
/// </remarks>
internal static class RoomProposal
{
    internal static void Add(
        HouseLayout layout, int room, ImmutableArray<int> devices, TakenParts taken, List<ControlGroup> groups, List<Finding> findings)
    {
        var families = Families(layout, devices, taken);
        var switchSets = SwitchSets(layout, devices, taken);
        var roomId = layout.House.Rooms[room].Source.Id;
        for (var i = 0; i < switchSets.Count; i++)
        {
            // The last set of switches takes every family that is left, but a fan keeps its own control.
            var loads = i == switchSets.Count - 1 ? families.Skip(i) : families.Skip(i).Take(1);
            ImmutableArray<ControlledLoad> acted = [.. loads.SelectMany(f => f).OrderBy(l => l.Device).ThenBy(l => l.Part)];
            groups.Add(new ControlGroup($"{roomId}/control-{i + 1}", switchSets[i], acted, Proposed: true));
            taken.Loads.UnionWith(acted);
            if (acted.IsEmpty)
            {
                findings.Add(Idle(layout, room, switchSets[i]));
            }
        }

        if (switchSets.Count == 0 && families.Count > 0)
        {
            findings.Add(Unswitched(layout, room, families));
        }
    }

    private static List<ImmutableArray<ControlledLoad>> Families(HouseLayout layout, ImmutableArray<int> devices, TakenParts taken)
    {
        var all = devices.SelectMany(d => Parts(layout.Devices[d].Kind).Select(p => new ControlledLoad(d, p))).Where(l => !taken.Has(l));
        return [.. all.GroupBy(l => Family(layout.Devices[l.Device], l.Part)).OrderBy(g => g.Key).Select(g => g.ToImmutableArray())];
    }

    private static IEnumerable<LoadPart> Parts(DeviceKind kind) => kind switch
    {
        DeviceKind.CeilingFan => [LoadPart.Light, LoadPart.Fan],
        DeviceKind.HalfHotReceptacle => [LoadPart.SwitchedHalf],
        _ when kind.IsLuminaireOrFan() => [LoadPart.Whole],
        _ => [],
    };

    private static int Family(LaidDevice device, LoadPart part) => (device.Kind, part) switch
    {
        (DeviceKind.CeilingLight or DeviceKind.RecessedLight, _) when device.Serves is ServedPlace.Room => 1,
        (DeviceKind.CeilingFan, LoadPart.Light) => 2,
        (DeviceKind.CeilingFan, _) => 3,
        (DeviceKind.HalfHotReceptacle, _) => 4,
        (DeviceKind.WallLight, _) => device.Serves is ServedPlace.Outdoors ? 7 : 5,
        (DeviceKind.ExhaustFan, _) => 6,
        _ => 8,
    };

    private static List<ImmutableArray<int>> SwitchSets(HouseLayout layout, ImmutableArray<int> devices, TakenParts taken)
    {
        var free = devices.Where(d => layout.Devices[d].Kind.IsSwitch() && !taken.Switches.Contains(d)).ToList();
        var threeWays = free.Where(d => layout.Devices[d].Kind is DeviceKind.ThreeWaySwitch).ToList();
        var fourWays = free.Where(d => layout.Devices[d].Kind is DeviceKind.FourWaySwitch).ToList();
        var sets = new List<ImmutableArray<int>>();
        for (var i = 0; i < threeWays.Count; i += 2)
        {
            var between = i == 0 ? fourWays : [];
            sets.Add([.. threeWays.Skip(i).Take(2).Concat(between).Order()]);
        }

        if (threeWays.Count == 0 && fourWays.Count > 0)
        {
            sets.Add([.. fourWays]);
        }

        sets.AddRange(free.Except(threeWays).Except(fourWays).Select(d => ImmutableArray.Create(d)));
        return sets;
    }

    private static Finding Idle(HouseLayout layout, int room, ImmutableArray<int> switches) => new()
    {
        Code = "switch-without-load",
        Severity = Severity.Advice,
        Where = [layout.House.Rooms[room].Source.Id, .. switches.Select(s => layout.Devices[s].Id)],
        Text = FormattableString.Invariant($"{layout.House.Rooms[room].Source.Called()} has a switch with nothing left to control: add a light, say what it controls, or take the switch out."),
    };

    private static Finding Unswitched(HouseLayout layout, int room, List<ImmutableArray<ControlledLoad>> families) => new()
    {
        Code = "load-without-switch",
        Severity = Severity.Note,
        Where = [layout.House.Rooms[room].Source.Id, .. families.SelectMany(f => f).Select(l => layout.Devices[l.Device].Id).Distinct()],
        Text = FormattableString.Invariant($"{layout.House.Rooms[room].Source.Called()} has lights or fans and no switch of its own; they are wired always on, as a lampholder with a pull chain is. Say what controls them."),
    };
}
