using System.Collections.Immutable;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Layout;

/// <summary>Where switches go: beside the doors of a room, on the side with more free wall.</summary>
/// <remarks>Source: common practice, no source.</remarks>
internal static class DoorSpots
{
    /// <summary>The doors of a room, the one that people enter by first.</summary>
    internal static ImmutableArray<FramedOpening> Doors(FramedHouse house, int room) =>
        [.. house.Openings.Where(o => o.Room == room && o.Source.Kind is not (OpeningKind.Window or OpeningKind.VehicleDoor))
            .OrderBy(o => Rank(house, o)).ThenBy(o => o.Side).ThenBy(o => o.From)];

    /// <summary>The switch's spot beside a door; round the corner where the door leaves no wall beside it.</summary>
    internal static (int Side, int Offset) Beside(FramedHouse house, FramedOpening door)
    {
        var jamb = PracticeDefaults.SwitchFromJamb.Inches().ToSixteenths();
        var (room, side) = (house.Rooms[door.Room], door.Side);
        var (before, after) = (FreeBefore(house, door, side, door.From), FreeAfter(house, door, side, door.To));
        var (last, next) = ((side + room.Corners.Length - 1) % room.Corners.Length, (side + 1) % room.Corners.Length);
        var end = WallSpots.LengthOf(room, last);
        var roundBefore = before == door.From ? FreeBefore(house, door, last, end) : 0;
        var roundAfter = after == WallSpots.LengthOf(room, side) - door.To ? FreeAfter(house, door, next, 0) : 0;
        if (Math.Max(before, after) >= jamb || Math.Max(roundBefore, roundAfter) <= Math.Max(before, after))
        {
            return (side, after >= before ? door.To + Math.Min(jamb, after / 2) : door.From - Math.Min(jamb, before / 2));
        }

        return roundAfter >= roundBefore ? (next, Math.Min(jamb, roundAfter / 2)) : (last, end - Math.Min(jamb, roundBefore / 2));
    }

    /// <summary>The spot beside a door on the door's own wall, as what stands outdoors must.</summary>
    internal static int BesideOnWall(FramedHouse house, FramedOpening door)
    {
        var jamb = PracticeDefaults.SwitchFromJamb.Inches().ToSixteenths();
        var (before, after) = (FreeBefore(house, door, door.Side, door.From), FreeAfter(house, door, door.Side, door.To));
        return after >= before ? door.To + Math.Min(jamb, after / 2) : door.From - Math.Min(jamb, before / 2);
    }

    // Unbroken wall of a side up to an offset, and from an offset on.
    private static int FreeBefore(FramedHouse house, FramedOpening door, int side, int offset) =>
        offset - Others(house, door, side).Where(o => o.To <= offset).Select(o => o.To).DefaultIfEmpty(0).Max();

    private static int FreeAfter(FramedHouse house, FramedOpening door, int side, int offset) =>
        Others(house, door, side).Where(o => o.From >= offset).Select(o => o.From).DefaultIfEmpty(WallSpots.LengthOf(house.Rooms[door.Room], side)).Min() - offset;

    private static IEnumerable<FramedOpening> Others(FramedHouse house, FramedOpening door, int side) =>
        house.Openings.Where(o => o.Room == door.Room && o.Side == side && !ReferenceEquals(o, door));

    /// <summary>The middle of a door.</summary>
    internal static PlanPoint Middle(FramedHouse house, FramedOpening door) =>
        WallSpots.PointAt(house.Rooms[door.Room], door.Side, (door.From + door.To) / 2);

    private static int Rank(FramedHouse house, FramedOpening door) => door.OtherRoom < 0
        ? door.Source.Kind is OpeningKind.WideOpening ? 0 : 2
        : house.Rooms[door.OtherRoom].Source.Kind switch
        {
            RoomKind.Hall or RoomKind.Foyer or RoomKind.Stair => 0,
            RoomKind.Closet or RoomKind.Bathroom or RoomKind.Storage => 3,
            _ => 1,
        };
}
