using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.JobFiles;

/// <summary>Lengths of a room's sides, in the order in which the user names its walls.</summary>
public static class RoomSides
{
    /// <summary>The sides: of a rectangle its width and depth twice, of a polygon from corner to corner.</summary>
    public static ImmutableArray<Length> Of(Room room)
    {
        if (room.Size is { } size)
        {
            return [size.Width, size.Depth, size.Width, size.Depth];
        }

        return [.. room.Corners.Select((c, i) => Apart(c, room.Corners[(i + 1) % room.Corners.Length]))];
    }

    private static Length Apart(GridPoint a, GridPoint b)
    {
        var (from, to) = (Outlines.Snap(a), Outlines.Snap(b));
        return Length.FromSixteenths(from.StraightDistanceTo(to));
    }
}
