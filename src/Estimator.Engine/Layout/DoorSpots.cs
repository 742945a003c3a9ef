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

    /// <summary>The switch's spot beside a door.</summary>
    internal static (int Side, int Offset) Beside(FramedHouse house, FramedOpening door)
    {
        var jamb = PracticeDefaults.SwitchFromJamb.Inches().ToSixteenths();
        var length = WallSpots.LengthOf(house.Rooms[door.Room], door.Side);
        var others = house.Openings.Where(o => o.Room == door.Room && o.Side == door.Side && !ReferenceEquals(o, door)).ToList();
        var before = door.From - others.Where(o => o.To <= door.From).Select(o => o.To).DefaultIfEmpty(0).Max();
        var after = others.Where(o => o.From >= door.To).Select(o => o.From).DefaultIfEmpty(length).Min() - door.To;
        if (after <= 0 && before <= 0)
        {
            return RoundTheCorner(house, door, jamb);
        }

        var offset = after >= before ? door.To + Math.Min(jamb, after / 2) : door.From - Math.Min(jamb, before / 2);
        return (door.Side, Math.Clamp(offset, 0, length));
    }

    // An opening as wide as its wall leaves no jamb on it: the switch stands on a wall beside, on the one with more free length next to the corner.
    private static (int Side, int Offset) RoundTheCorner(FramedHouse house, FramedOpening door, int jamb)
    {
        var room = house.Rooms[door.Room];
        var (next, last) = ((door.Side + 1) % room.Corners.Length, (door.Side + room.Corners.Length - 1) % room.Corners.Length);
        var (nextLength, lastLength) = (WallSpots.LengthOf(room, next), WallSpots.LengthOf(room, last));
        var ahead = house.Openings.Where(o => o.Room == door.Room && o.Side == next).Select(o => o.From).DefaultIfEmpty(nextLength).Min();
        var behind = lastLength - house.Openings.Where(o => o.Room == door.Room && o.Side == last).Select(o => o.To).DefaultIfEmpty(0).Max();
        return ahead >= behind ? (next, Math.Min(jamb, ahead / 2)) : (last, lastLength - Math.Min(jamb, behind / 2));
    }

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
