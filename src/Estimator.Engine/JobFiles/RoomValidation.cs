using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.JobFiles;

/// <summary>Checks one room: its shape and what stands on its walls.</summary>
internal static class RoomValidation
{
    internal static void Check(Room room, Length levelCeiling, string path, ProblemList problems)
    {
        problems.Length($"{path}.ceiling_height", room.CeilingHeight, Length.FromFeet(1), Length.FromFeet(40));
        foreach (var (count, c) in room.Counts.Select((x, i) => (x, i)))
        {
            problems.Range($"{path}.counts[{c}].count", count.Count, 0, JobLimits.Count, "devices");
        }

        if (!ShapeIsSound(room, path, problems))
        {
            return;
        }

        var sides = RoomSides.Of(room);
        foreach (var (placed, d) in room.Placed.Select((x, i) => (x, i)))
        {
            if (placed.At is null == placed.Wall is null)
            {
                problems.Add($"{path}.placed[{d}]", placed.At is null ? "neither at nor wall" : "both at and wall", "one of them");
            }

            Wall(placed.Wall, sides, $"{path}.placed[{d}].wall", problems);
            problems.Length($"{path}.placed[{d}].height", placed.Height, Length.Zero, room.CeilingHeight ?? levelCeiling);
        }

        foreach (var (counter, c) in room.Counters.Select((x, i) => (x, i)))
        {
            problems.Length($"{path}.counters[{c}].length", counter.Length, Length.FromInches(1), Length.FromFeet(100));
            problems.Length($"{path}.counters[{c}].depth", counter.Depth, Length.FromInches(1), Length.FromFeet(30));
            Wall(counter.Wall, sides, $"{path}.counters[{c}].wall", problems);
        }
    }

    /// <summary>Checks a spot on a wall.</summary>
    internal static void Wall(WallSpot? spot, ImmutableArray<Length> sides, string path, ProblemList problems)
    {
        if (spot is null)
        {
            return;
        }

        if (spot.Side < 1 || spot.Side > sides.Length)
        {
            problems.Add($"{path}.side", $"wall {spot.Side}", $"a wall from 1 to {sides.Length} of this room");
        }
        else if (spot.Offset < Length.Zero || spot.Offset > sides[spot.Side - 1])
        {
            problems.Add($"{path}.offset", spot.Offset.ToString(), $"0' 0\" to {sides[spot.Side - 1]}, the length of that wall");
        }
    }

    private static bool ShapeIsSound(Room room, string path, ProblemList problems)
    {
        if (room.Size is null == room.Corners.IsEmpty)
        {
            problems.Add(path, room.Size is null ? "neither size nor corners" : "both size and corners", "size for a rectangle, or corners for a polygon");
            return false;
        }

        if (room.Size is { } size)
        {
            problems.Length($"{path}.size.width", size.Width, Length.FromInches(6), Length.FromFeet(500));
            problems.Length($"{path}.size.depth", size.Depth, Length.FromInches(6), Length.FromFeet(500));
            return size.Width >= Length.FromInches(6) && size.Depth >= Length.FromInches(6);
        }

        return RingIsSound(room.Corners, $"{path}.corners", problems)
            & room.Holes.Select((h, i) => RingIsSound(h, $"{path}.holes[{i}]", problems) && Inside(room, h, $"{path}.holes[{i}]", problems)).All(ok => ok);
    }

    private static bool RingIsSound(ImmutableArray<GridPoint> ring, string path, ProblemList problems)
    {
        if (ring.Length is < 3 or > JobLimits.Corners)
        {
            problems.Add(path, $"{ring.Length} corners", $"3 to {JobLimits.Corners} corners");
            return false;
        }

        var corners = Outlines.Of(ring);
        if (Framing.Polygons.DoubleArea(corners) == 0 || Outlines.CrossesItself(corners))
        {
            problems.Add(path, "an outline that crosses itself or has no area", "corners in order round the room");
            return false;
        }

        return true;
    }

    private static bool Inside(Room room, ImmutableArray<GridPoint> hole, string path, ProblemList problems)
    {
        var inside = Outlines.Of(hole).All(p => Framing.Polygons.Holds(Outlines.Of(room.Corners), p));
        if (!inside)
        {
            problems.Add(path, "a hole outside its room", "a hole inside the outline");
        }

        return inside;
    }
}
