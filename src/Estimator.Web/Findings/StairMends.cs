using System.Collections.Immutable;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Web.Jobs;

namespace Estimator.Web.Findings;

/// <summary>Mends of the controls of a stair that the user stated by counts.</summary>
internal static class StairMends
{
    private const string ThreeWay = "three_way_switch";

    /// <summary>Moves one switch of the stair's light to the other floor; null where the light has no stated control of two counted switches.</summary>
    internal static Mend? SwitchAbove(Finding finding, Job job)
    {
        if (finding.Where is not [var stair, var above] || Lighting(job, stair) is not { Switches.Length: > 1 } control || Room(job, above) is not { } upper)
        {
            return null;
        }

        var moved = control.Switches[^1];
        return Room(job, moved.Split('/')[0]) is { } from && moved == Counted(from, ThreeWay, Count(from, DeviceKind.ThreeWaySwitch))
            ? new Mend("Put a switch there", $"{RoomActs.Name(upper)}: switch of the stair", j => Swapped(
                RoomActs.Add(RoomActs.Set(j, from.Id, DeviceKind.ThreeWaySwitch, Count(from, DeviceKind.ThreeWaySwitch) - 1), upper.Id, DeviceKind.ThreeWaySwitch),
                control.Id, moved, Counted(upper, ThreeWay, Count(upper, DeviceKind.ThreeWaySwitch) + 1)))
            : null;
    }

    /// <summary>Makes a counted dimmer of the stair a three-way switch; null for one that was put in its place, which is exchanged there.</summary>
    internal static Mend? NoDimmer(Finding finding, Job job)
    {
        if (finding.Where is not [var dimmer, ..] || job.Controls.FirstOrDefault(c => c.Switches.Contains(dimmer)) is not { } control)
        {
            return null;
        }

        return Room(job, dimmer.Split('/')[0]) is { } room && dimmer == Counted(room, "dimmer", Count(room, DeviceKind.Dimmer))
            ? new Mend("Take a three-way switch", $"{RoomActs.Name(room)}: three-way switch instead of a dimmer", j => Swapped(
                RoomActs.Add(RoomActs.Set(j, room.Id, DeviceKind.Dimmer, Count(room, DeviceKind.Dimmer) - 1), room.Id, DeviceKind.ThreeWaySwitch),
                control.Id, dimmer, Counted(room, ThreeWay, Count(room, DeviceKind.ThreeWaySwitch) + 1)))
            : null;
    }

    private static Control? Lighting(Job job, string stair) => job.Controls.FirstOrDefault(c => c.Loads.Any(l => l.StartsWith($"{stair}/", StringComparison.Ordinal)));

    private static Room? Room(Job job, string id) => RoomActs.All(job).FirstOrDefault(r => r.Id == id);

    private static int Count(Room room, DeviceKind kind) => room.Counts.Where(c => c.Kind == kind && c.Serves is ServedPlace.Room).Sum(c => c.Count);

    private static string Counted(Room room, string kind, int number) => $"{room.Id}/{kind}-{number}";

    private static Job Swapped(Job job, string control, string old, string now) => job with
    {
        Controls = [.. job.Controls.Select(c => c.Id == control ? c with { Switches = c.Switches.Select(s => s == old ? now : s).ToImmutableArray() } : c)],
    };
}
