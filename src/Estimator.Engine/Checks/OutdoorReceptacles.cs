using System.Collections.Immutable;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>A dwelling has receptacles outdoors at the front and at the back, reachable from grade.</summary>
/// <remarks>
/// Judged for a new dwelling alone, with a kitchen, a service of its own and a door to the outside: of an existing one the rest is not stated. Two that look
/// the same way serve one side. Source: NEC 210.52(E)(1).
/// </remarks>
internal static class OutdoorReceptacles
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        if (!Dwelling(context) || context.Rule("outdoor-receptacles") is not { } rule)
        {
            return [];
        }

        var highest = PlacingLimits.OutdoorHighest.Inches().ToSixteenths();
        var outside = context.Layout.Devices.Where(d => d.Kind.IsReceptacle() && d.Kind is not DeviceKind.Receptacle240V && d.Place.Height <= highest
            && OutsideDoors.AtGrade(context.House, d.Place.Level) && (d.Serves is ServedPlace.Outdoors || IsOutdoors(context, d.Place.Room))).ToList();
        var needed = (int)ReceptacleRules.Outdoor.Number();
        var where = Where(context, outside);
        if (outside.Count < needed)
        {
            return context.Ask(
                rule, false, () => $"The dwelling has {outside.Count} receptacles outdoors that can be reached from grade, and one is asked for at the front and one at the back. Add {needed - outside.Count}.", where);
        }

        return context.Ask(
            rule, outside.Select(d => Looks(context, d)).Distinct().Count() > 1,
            () => $"All {outside.Count} receptacles outdoors stand on one side of the dwelling; one is asked for at the front and one at the back. Add one on the other side.", where);
    }

    private static bool Dwelling(CheckContext context) => context.Job.Panels.FirstOrDefault(p => p.FedFrom is null) is { Existing: false }
        && context.House.Rooms.Any(r => r.Source.Kind is RoomKind.Kitchen) && !FrontAndBack.Rooms(context.House).IsEmpty;

    private static bool IsOutdoors(CheckContext context, int room) => context.House.Rooms[room].Source.Kind is RoomKind.Outdoors;

    // What stands on an outside wall looks as the wall does; what stands on a deck, the way from the middle of the house.
    private static (int X, int Y) Looks(CheckContext context, LaidDevice device)
    {
        if (!IsOutdoors(context, device.Place.Room) && device.Place.Side >= 0)
        {
            return OutsideWalls.Direction(context.House, device.Place.Room, device.Place.Side);
        }

        var corners = context.House.Levels[device.Place.Level].Rooms.Where(r => !IsOutdoors(context, r)).SelectMany(r => context.House.Rooms[r].Corners).ToList();
        var (x, y) = corners.Count == 0 ? (0, 0)
            : (device.Place.Spot.X - (corners.Min(c => c.X) + corners.Max(c => c.X)) / 2, device.Place.Spot.Y - (corners.Min(c => c.Y) + corners.Max(c => c.Y)) / 2);
        return Math.Abs(x) >= Math.Abs(y) ? (Math.Sign(x), 0) : (0, Math.Sign(y));
    }

    // The rooms of front and back, those first that have no receptacle outdoors yet.
    private static ImmutableArray<string> Where(CheckContext context, List<LaidDevice> outside) =>
        [.. FrontAndBack.Rooms(context.House).OrderBy(r => outside.Any(d => d.Place.Room == r)).Select(r => context.House.Rooms[r].Source.Id).Distinct()];
}
