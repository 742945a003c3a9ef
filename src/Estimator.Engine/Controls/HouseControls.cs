using System.Collections.Immutable;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;

namespace Estimator.Engine.Controls;

/// <summary>Finds which switch acts on what: as the user said, and by proposal for the rest.</summary>
public static class HouseControls
{
    /// <summary>The controls of a house.</summary>
    public static ControlPlan Plan(HouseLayout layout)
    {
        var groups = new List<ControlGroup>();
        var findings = new List<Finding>();
        var taken = new TakenParts();
        foreach (var control in layout.House.Job.Controls)
        {
            groups.Add(Stated(layout, control, taken));
            findings.AddRange(SwitchKinds.Misfits(layout, groups[^1]));
        }

        var byRoom = Enumerable.Range(0, layout.Devices.Length).ToLookup(d => layout.Devices[d].Place.Room);
        for (var room = 0; room < layout.House.Rooms.Length; room++)
        {
            RoomProposal.Add(layout, room, [.. byRoom[room]], taken, groups, findings);
        }

        return new ControlPlan([.. groups.OrderBy(g => g.Switches.DefaultIfEmpty(int.MaxValue).Min()).ThenBy(g => g.Loads.Length)], [.. findings]);
    }

    private static ControlGroup Stated(HouseLayout layout, Control control, TakenParts taken)
    {
        var index = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var d = 0; d < layout.Devices.Length; d++)
        {
            index.TryAdd(layout.Devices[d].Id, d);
        }

        var switches = control.Switches.Where(index.ContainsKey).Select(s => index[s]).Distinct().Order().ToImmutableArray();
        var loads = control.Loads.Select(l => Load(layout, index, l)).OfType<ControlledLoad>().Distinct()
            .OrderBy(l => l.Device).ThenBy(l => l.Part).ToImmutableArray();
        taken.Switches.UnionWith(switches);
        taken.Loads.UnionWith(loads);
        return new ControlGroup(control.Id, switches, loads, Proposed: false);
    }

    private static ControlledLoad? Load(HouseLayout layout, Dictionary<string, int> index, string reference)
    {
        var (id, part) = reference.Split('#') is [var device, var suffix] ? (device, suffix) : (reference, "");
        return index.TryGetValue(id, out var d)
            ? new ControlledLoad(d, (layout.Devices[d].Kind, part) switch
            {
                (DeviceKind.CeilingFan, "light") => LoadPart.Light,
                (DeviceKind.CeilingFan, "fan") => LoadPart.Fan,
                (DeviceKind.HalfHotReceptacle, _) => LoadPart.SwitchedHalf,
                _ => LoadPart.Whole,
            })
            : null;
    }
}
