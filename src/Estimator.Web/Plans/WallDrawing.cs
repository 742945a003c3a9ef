using System.Collections.Immutable;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Rules;

namespace Estimator.Web.Plans;

/// <summary>Draws walls from the outlines of rooms, which are measured to the inside.</summary>
internal static class WallDrawing
{
    /// <summary>How thick a wall is drawn that nothing faces: the job does not state it.</summary>
    internal const double OuterThickness = 0.55;

    /// <summary>How thick a wall is drawn whose two faces were drawn on one line.</summary>
    internal const double SharedThickness = 0.34;

    // Where two sides meet at a very sharp corner the belt is cut short there.
    private const double SharpestMitre = 0.3;
    private const double Sixteenths = 192;

    internal static DrawnWalls Of(FramedHouse house, FramedLevel level, SheetFrame frame)
    {
        var rooms = level.Rooms.Where(r => house.Rooms[r].Source.Kind is not RoomKind.Outdoors).ToList();
        var blocks = rooms.Select(r => Belt(house.Rooms[r], frame)).ToList();
        var shared = new List<(SheetPoint, SheetPoint)>();
        var thickest = Thickest(house);
        foreach (var room in rooms)
        {
            foreach (var other in rooms.Where(o => o > room))
            {
                for (var side = 0; side < house.Rooms[room].Corners.Length; side++)
                {
                    foreach (var facing in Facing.Between(house, room, side, other, thickest))
                    {
                        Add(house, frame, room, side, facing, blocks, shared);
                    }
                }
            }
        }

        return new DrawnWalls([.. blocks], [.. shared], SharedThickness);
    }

    /// <summary>The thickest wall that is taken for one, in sixteenths.</summary>
    internal static int Thickest(FramedHouse house) => (house.Job.Practice.MaximumWallThickness ?? PracticeDefaults.MaximumWallThickness.Inches()).ToSixteenths();

    /// <summary>The direction out of a room through a side, on the sheet.</summary>
    internal static SheetPoint Outward(FramedRoom room, int side, SheetFrame frame)
    {
        var (a, b) = (room.Corners[side], room.Corners[(side + 1) % room.Corners.Length]);
        return frame.Point(0, 0).DirectionTo(frame.Point((b.Y - a.Y) / Sixteenths, (a.X - b.X) / Sixteenths));
    }

    private static void Add(
        FramedHouse house, SheetFrame frame, int room, int side, Facing facing, List<ImmutableArray<SheetPoint>> blocks, List<(SheetPoint, SheetPoint)> shared)
    {
        var own = house.Rooms[room];
        var (from, to) = (frame.Point(WallSpots.PointAt(own, side, facing.From)), frame.Point(WallSpots.PointAt(own, side, facing.To)));
        var gap = facing.Gap / Sixteenths;
        var outward = Outward(own, side, frame);
        if (gap < SharedThickness)
        {
            shared.Add((from.Along(outward, gap / 2), to.Along(outward, gap / 2)));
        }
        else if (gap > 2 * OuterThickness)
        {
            blocks.Add([from, to, to.Along(outward, gap), from.Along(outward, gap)]);
        }
    }

    // The outline pushed outwards, corners mitred.
    private static ImmutableArray<SheetPoint> Belt(FramedRoom room, SheetFrame frame)
    {
        var count = room.Corners.Length;
        return [.. Enumerable.Range(0, count).Select(i =>
        {
            var (before, after) = (Outward(room, (i + count - 1) % count, frame), Outward(room, i, frame));
            var mitre = Math.Max(SharpestMitre, 1 + before.X * after.X + before.Y * after.Y);
            var corner = frame.Point(room.Corners[i]);
            return new SheetPoint(corner.X + OuterThickness * (before.X + after.X) / mitre, corner.Y + OuterThickness * (before.Y + after.Y) / mitre);
        })];
    }
}
