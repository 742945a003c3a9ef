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
        var between = context.Limit(Code, ReceptacleRules.WallBetween);
        var most = Length.FromInches(between).ToSixteenths();
        var least = ReceptacleRules.WallSpaceLeast.Inches().ToSixteenths();
        for (var room = 0; room < context.Layout.House.Rooms.Length; room++)
        {
            if (!AppliesTo(context.Layout.House.Rooms[room].Source))
            {
                continue;
            }

            foreach (var space in WallSpaces.Of(context.Layout.House, room).Where(s => s.Length >= least))
            {
                var gap = WidestGap(space, Spots(context, room, space));
                if (gap > most)
                {
                    yield return context.Asked(
                        Code, "210.52(A)(1)",
                        $"{context.RoomName(room)}: a wall space {Length.FromSixteenths(space.Length)} long has a point {Length.FromSixteenths(gap / 2)} from a receptacle; {Length.FromInches(between / 2)} is the most. Add a receptacle there.",
                        [context.Layout.House.Rooms[room].Source.Id]);
                }
            }
        }
    }

    internal static bool AppliesTo(Room room) => room.Finished && room.Kind is RoomKind.Living or RoomKind.Dining or RoomKind.Family or RoomKind.Kitchen
        or RoomKind.Bedroom or RoomKind.Office or RoomKind.Habitable or RoomKind.Sunroom or RoomKind.Basement;

    // Twice the farthest that any point of the space is from a receptacle: the widest gap between two, or twice the widest to an end.
    private static int WidestGap(WallSpace space, List<int> spots)
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

    private static List<int> Spots(CheckContext context, int room, WallSpace space)
    {
        var framed = context.Layout.House.Rooms[room];
        var starts = WallSpaces.SideStarts(framed);
        return [.. context.Layout.Devices.Where(d => d.Place.Room == room && d.Place.Side >= 0 && Counts(d))
            .Select(d => (starts[d.Place.Side] + d.Place.Offset - space.From + starts[^1]) % starts[^1]).Where(s => s <= space.Length).Order()];
    }

    private static bool Counts(LaidDevice device) => device.Kind is DeviceKind.DuplexReceptacle or DeviceKind.GfciReceptacle or DeviceKind.HalfHotReceptacle
        && device.Serves is ServedPlace.Room or ServedPlace.Closet && device.Place.Mount is Mount.Wall;
}
