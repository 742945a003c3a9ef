using System.Collections.Immutable;
using Estimator.Engine.House;

namespace Estimator.Web.Budget;

/// <summary>What a room's wishes make of the least that the code asks for.</summary>
internal static class BudgetWishes
{
    /// <summary>Devices of a room.</summary>
    /// <param name="room">The room and its wishes.</param>
    /// <param name="least">What the code asks for.</param>
    /// <param name="close">The same with receptacles closer together.</param>
    internal static ImmutableArray<DeviceCount> Counts(BudgetRoom room, ImmutableArray<DeviceCount> least, ImmutableArray<DeviceCount> close)
    {
        var counts = least;
        if (room.CloseReceptacles)
        {
            counts = Change(counts, DeviceKind.DuplexReceptacle, Math.Max(0, WallReceptacles(close) - WallReceptacles(least)));
        }

        var ceiling = Of(least, DeviceKind.CeilingLight);
        if (room.RecessedLights)
        {
            var lights = (int)Math.Ceiling(room.Size.Width.ToFeet() * room.Size.Depth.ToFeet() / BudgetTable.RecessedArea);
            counts = Change(Change(counts, DeviceKind.CeilingLight, -ceiling), DeviceKind.RecessedLight, Math.Max(1, lights));

            // Where two switches act on the light they stay; elsewhere a dimmer takes the place of the one, or comes beside those of other lights.
            counts = Of(least, DeviceKind.ThreeWaySwitch) > 0
                ? counts
                : Change(Change(counts, DeviceKind.SinglePoleSwitch, ceiling > 0 ? -1 : 0), DeviceKind.Dimmer, 1);
        }

        if (room.CeilingFan)
        {
            // Its light takes the place of the ceiling light and of its switch; the fan has a switch of its own.
            var switched = !room.RecessedLights && ceiling > 0 && Of(least, DeviceKind.ThreeWaySwitch) == 0;
            counts = Change(Change(counts, DeviceKind.CeilingLight, -Of(counts, DeviceKind.CeilingLight)), DeviceKind.CeilingFan, 1);
            counts = Change(counts, DeviceKind.SinglePoleSwitch, switched ? 1 : 2);
        }

        return counts;
    }

    /// <summary>The wishes that a room's devices show.</summary>
    internal static BudgetRoom Read(BudgetRoom room, ImmutableArray<DeviceCount> counts, ImmutableArray<DeviceCount> least) => room with
    {
        CloseReceptacles = WallReceptacles(counts) > WallReceptacles(least),
        RecessedLights = Of(counts, DeviceKind.RecessedLight) > 0,
        CeilingFan = Of(counts, DeviceKind.CeilingFan) > 0,
    };

    private static int WallReceptacles(ImmutableArray<DeviceCount> counts) => counts.Where(c => c is { Kind: DeviceKind.DuplexReceptacle, Serves: ServedPlace.Room }).Sum(c => c.Count);

    private static int Of(ImmutableArray<DeviceCount> counts, DeviceKind kind) => counts.Where(c => c.Kind == kind).Sum(c => c.Count);

    private static ImmutableArray<DeviceCount> Change(ImmutableArray<DeviceCount> counts, DeviceKind kind, int by)
    {
        if (by == 0)
        {
            return counts;
        }

        var known = counts.Any(c => c.Kind == kind && c.Serves is ServedPlace.Room);
        var changed = known
            ? counts.Select(c => c.Kind == kind && c.Serves is ServedPlace.Room ? c with { Count = Math.Max(0, c.Count + by) } : c)
            : counts.Append(new DeviceCount { Kind = kind, Count = Math.Max(0, by) });
        return [.. changed.Where(c => c.Count > 0)];
    }
}
