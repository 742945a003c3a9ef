using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Layout;

/// <summary>The sides of rooms that no other room lies behind.</summary>
internal static class OutsideWalls
{
    /// <summary>The outside sides of a room.</summary>
    internal static IEnumerable<int> Of(FramedHouse house, int room)
    {
        var others = Indoors(house, house.Rooms[room].Level).Where(r => r != room).ToList();
        var thickest = Thickest(house);
        return Enumerable.Range(0, house.Rooms[room].Corners.Length).Where(s => !others.Any(o => Facing.Between(house, room, s, o, thickest).Any()));
    }

    /// <summary>Whether a deck, porch or yard lies beside a room of the dwelling.</summary>
    internal static bool Touches(FramedHouse house, int outdoors)
    {
        var thickest = Thickest(house);
        return Indoors(house, house.Rooms[outdoors].Level)
            .Any(r => Enumerable.Range(0, house.Rooms[r].Corners.Length).Any(s => Facing.Between(house, r, s, outdoors, thickest).Any()));
    }

    /// <summary>Which way a side looks, along the axis on which it looks most.</summary>
    internal static (int X, int Y) Direction(FramedHouse house, int room, int side)
    {
        var corners = house.Rooms[room].Corners;
        var (a, b) = (corners[side], corners[(side + 1) % corners.Length]);
        // Outlines are counter-clockwise, so the outside lies right of each side.
        var (x, y) = (b.Y - a.Y, a.X - b.X);
        return Math.Abs(x) >= Math.Abs(y) ? (Math.Sign(x), 0) : (0, Math.Sign(y));
    }

    private static IEnumerable<int> Indoors(FramedHouse house, int level) =>
        house.Levels[level].Rooms.Where(r => house.Rooms[r].Source.Kind is not (RoomKind.Outdoors or RoomKind.Void));

    private static int Thickest(FramedHouse house) => (house.Job.Practice.MaximumWallThickness ?? PracticeDefaults.MaximumWallThickness.Inches()).ToSixteenths();
}
