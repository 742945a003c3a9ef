using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Web.Jobs;

namespace Estimator.Web.Rooms;

/// <summary>Columns of the grid, in their groups: the usual devices, and those that the job has.</summary>
public static class GridColumns
{
    /// <summary>Groups in order, each with all its kinds; those shown without being asked for are marked.</summary>
    public static ImmutableArray<(string Group, ImmutableArray<(DeviceKind Kind, bool Usual)> Kinds)> Groups { get; } =
    [
        ("Receptacles", [(DeviceKind.DuplexReceptacle, true), (DeviceKind.GfciReceptacle, true), (DeviceKind.HalfHotReceptacle, false), (DeviceKind.Receptacle240V, false)]),
        ("Lights", [(DeviceKind.RecessedLight, true), (DeviceKind.CeilingLight, true), (DeviceKind.WallLight, true)]),
        ("Controls", [(DeviceKind.SinglePoleSwitch, true), (DeviceKind.ThreeWaySwitch, true), (DeviceKind.FourWaySwitch, false), (DeviceKind.Dimmer, true), (DeviceKind.SensorSwitch, false)]),
        ("Other", [(DeviceKind.CeilingFan, false), (DeviceKind.ExhaustFan, true), (DeviceKind.SmokeAlarm, true), (DeviceKind.CoAlarm, false), (DeviceKind.SmokeCoAlarm, true)]),
    ];

    /// <summary>The kinds shown for a job, with their group's name at the first of each group.</summary>
    public static ImmutableArray<(DeviceKind Kind, string Group, bool First)> Shown(Job job, bool all)
    {
        var used = RoomActs.All(job).SelectMany(r => r.Counts.Select(c => c.Kind).Concat(r.Placed.Select(p => p.Kind))).ToHashSet();
        return
        [
            .. Groups.SelectMany(g => g.Kinds.Where(k => all || k.Usual || used.Contains(k.Kind)).Select((k, i) => (k.Kind, g.Group, i == 0))),
        ];
    }
}
