using System.Collections.Immutable;
using Estimator.Engine.Framing;
using Estimator.Engine.House;

namespace Estimator.Engine.Layout;

/// <summary>Where a dwelling at grade has its front and its back, for the receptacles outdoors.</summary>
/// <remarks>
/// The front is the wall of the first door to the outside; the back a wall that looks the other way, one with a door to the outside before one without.
/// Source: NEC 210.52(E)(1); which wall is the front is our reading.
/// </remarks>
internal static class FrontAndBack
{
    /// <summary>The rooms on whose outside walls the front and back receptacles go; empty for a house without a door to the outside at grade.</summary>
    internal static ImmutableArray<int> Rooms(FramedHouse house)
    {
        if (Front(house) is not { } front)
        {
            return [];
        }

        var facing = OutsideWalls.Direction(house, front.Room, front.Side);
        var back = AtGrade(house).SelectMany(r => Sides(house, r).Select(s => (Room: r, s.Side, s.Door)))
            .Where(x => OutsideWalls.Direction(house, x.Room, x.Side) != facing)
            .OrderByDescending(x => x.Door).ThenByDescending(x => Opposite(OutsideWalls.Direction(house, x.Room, x.Side), facing))
            .ThenBy(x => house.Rooms[x.Room].Source.Kind is RoomKind.Closet or RoomKind.Bathroom or RoomKind.Storage).ThenBy(x => x.Room)
            .Select(x => (int?)x.Room).FirstOrDefault();
        return back is { } other ? [front.Room, other] : [front.Room];
    }

    /// <summary>Spots on the outside walls of a room: beside its doors to the outside, else on the walls that look away from the front.</summary>
    internal static IEnumerable<(int Side, int Offset)> Spots(FramedHouse house, int room, int count)
    {
        var doors = OutsideDoors.Of(house, room).Select(d => (d.Side, Offset: DoorSpots.BesideOnWall(house, d))).ToList();
        (int X, int Y)? facing = Front(house) is { } front ? OutsideWalls.Direction(house, front.Room, front.Side) : null;
        var taken = doors.Select(d => d.Side).ToHashSet();
        var walls = OutsideWalls.Of(house, room).Where(s => !taken.Contains(s))
            .OrderByDescending(s => facing is { } f && Opposite(OutsideWalls.Direction(house, room, s), f)).ThenByDescending(s => WallSpots.LengthOf(house.Rooms[room], s)).ThenBy(s => s)
            .Select(s => (s, Free(house, room, s)));
        return doors.Concat(walls).Take(count);
    }

    private static FramedOpening? Front(FramedHouse house) => AtGrade(house).SelectMany(r => OutsideDoors.Of(house, r))
        .OrderBy(d => d.Source.Kind is not OpeningKind.EntranceDoor).ThenBy(d => d.Room).ThenBy(d => d.Side).ThenBy(d => d.From).FirstOrDefault();

    private static IEnumerable<int> AtGrade(FramedHouse house) => house.Rooms.Where(r => OutsideDoors.AtGrade(house, r.Level)
        && r.Source.Kind is not (RoomKind.Outdoors or RoomKind.Void or RoomKind.Crawl or RoomKind.Attic)).Select(r => r.Index);

    private static IEnumerable<(int Side, bool Door)> Sides(FramedHouse house, int room)
    {
        var doors = OutsideDoors.Of(house, room).Select(d => d.Side).ToHashSet();
        return OutsideWalls.Of(house, room).Union(doors).Select(s => (s, doors.Contains(s)));
    }

    private static bool Opposite((int X, int Y) a, (int X, int Y) b) => a == (-b.X, -b.Y);

    // The middle of a side, or a quarter of it where a door stands in the middle.
    private static int Free(FramedHouse house, int room, int side)
    {
        var length = WallSpots.LengthOf(house.Rooms[room], side);
        var breaks = house.Openings.Where(o => o.Room == room && o.Side == side && o.BreaksFloorLine).ToList();
        return new[] { length / 2, length / 4, length - length / 4 }.OrderBy(at => breaks.Any(b => b.From <= at && at <= b.To)).First();
    }
}
