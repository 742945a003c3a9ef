using Estimator.Engine.Findings;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>No point of a wall space is farther than half the spacing from a receptacle, measured round corners.</summary>
/// <remarks>Source: NEC 210.52(A).</remarks>
internal static class ReceptacleSpacing
{
    internal const string Code = "receptacle-spacing";

    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        if (context.Rule(Code) is not { } rule)
        {
            yield break;
        }

        var between = context.Limit(Code, ReceptacleRules.WallBetween);
        var most = Length.FromInches(between).ToSixteenths();
        var least = ReceptacleRules.WallSpaceLeast.Inches().ToSixteenths();
        for (var room = 0; room < context.Layout.House.Rooms.Length; room++)
        {
            if (!AppliesTo(context.Layout.House.Rooms[room].Source))
            {
                continue;
            }

            context.Applies(rule);
            foreach (var space in WallSpaces.Of(context.Layout.House, room).Where(s => s.Length >= least))
            {
                var gap = WidestGap(space, Along(context.House.Rooms[room], space, context.In(room).Where(Counts)));
                if (gap > most)
                {
                    yield return context.Asked(
                        rule, $"{context.RoomName(room)}: a wall space {Length.FromSixteenths(space.Length)} long has a point {Length.FromSixteenths(gap / 2)} from a receptacle; {Length.FromInches(between / 2)} is the most. Add a receptacle there.",
                        [context.Layout.House.Rooms[room].Source.Id]);
                }
            }
        }
    }

    internal static bool AppliesTo(Room room) => room.Finished && room.Kind is RoomKind.Living or RoomKind.Dining or RoomKind.Family or RoomKind.Kitchen
        or RoomKind.Bedroom or RoomKind.Office or RoomKind.Habitable or RoomKind.Sunroom or RoomKind.Basement;

    /// <summary>Twice the farthest that any point of the space is from a receptacle: the widest gap between two, or twice the widest to an end.</summary>
    internal static int WidestGap(WallSpace space, List<int> spots)
    {
        if (spots.Count == 0)
        {
            return 2 * space.Length;
        }

        var widest = space.Closed ? spots[0] + space.Length - spots[^1] : Math.Max(2 * spots[0], 2 * (space.Length - spots[^1]));
        for (var i = 1; i < spots.Count; i++)
        {
            widest = Math.Max(widest, spots[i] - spots[i - 1]);
        }

        return widest;
    }

    /// <summary>Where devices on the walls of a room stand along one of its wall spaces.</summary>
    internal static List<int> Along(FramedRoom room, WallSpace space, IEnumerable<LaidDevice> devices)
    {
        var starts = WallSpaces.SideStarts(room);
        return [.. devices.Where(d => d.Place.Side >= 0)
            .Select(d => (starts[d.Place.Side] + d.Place.Offset - space.From + starts[^1]) % starts[^1]).Where(s => s <= space.Length).Order()];
    }

    private static bool Counts(LaidDevice device) => device.Kind is DeviceKind.DuplexReceptacle or DeviceKind.GfciReceptacle or DeviceKind.HalfHotReceptacle
        && device.Serves is ServedPlace.Room or ServedPlace.Closet && device.Place.Mount is Mount.Wall;
}
