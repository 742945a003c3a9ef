using System.Collections.Immutable;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Layout;

/// <summary>Points inside a room: an even grid for lights, the middle, the neighbourhood of a fixture.</summary>
internal static class RoomPoints
{
    private const int FinestGrid = 24;

    /// <summary>So many points spread evenly over the room.</summary>
    internal static ImmutableArray<PlanPoint> Spread(FramedRoom room, int count)
    {
        var (minX, maxX) = (room.Corners.Min(c => c.X), room.Corners.Max(c => c.X));
        var (minY, maxY) = (room.Corners.Min(c => c.Y), room.Corners.Max(c => c.Y));
        for (var cells = count; cells <= FinestGrid * FinestGrid * Math.Max(1, count); cells += Math.Max(1, cells / 4))
        {
            var columns = Columns(maxX - minX, maxY - minY, cells);
            var rows = (cells + columns - 1) / columns;
            var points = Grid(minX, maxX, minY, maxY, columns, rows).Where(p => Polygons.Holds(room, p)).ToList();
            if (points.Count >= count)
            {
                return [.. Enumerable.Range(0, count).Select(i => points[(int)((long)i * points.Count / count)])];
            }
        }

        return [.. Enumerable.Repeat(room.Corners[0], count)];
    }

    /// <summary>A point near the middle of the room.</summary>
    internal static PlanPoint Middle(FramedRoom room) => Spread(room, 1)[0];

    /// <summary>A fixture's point; the room's middle where the room has none of these kinds with a place.</summary>
    internal static PlanPoint At(FramedHouse house, FramedRoom room, params ReadOnlySpan<FixtureKind> kinds)
    {
        foreach (var kind in kinds)
        {
            foreach (var fixture in room.Source.Fixtures)
            {
                if (fixture.Kind == kind && fixture.At is { } at)
                {
                    var point = house.Pose.ToCanonical(new PlanPoint(at.X.ToSixteenths(), at.Y.ToSixteenths()));
                    return Polygons.Holds(room, point) ? point : WallSpots.Nearest(room, point) is var (side, offset) ? WallSpots.PointAt(room, side, offset) : point;
                }
            }
        }

        return Middle(room);
    }

    // As many columns as make the cells about square.
    private static int Columns(int width, int depth, int cells)
    {
        var square = Roots.FloorOf((long)cells * Math.Max(1, width) / Math.Max(1, depth));
        return Math.Clamp(square, 1, cells);
    }

    private static IEnumerable<PlanPoint> Grid(int minX, int maxX, int minY, int maxY, int columns, int rows)
    {
        for (var r = 0; r < rows; r++)
        {
            for (var c = 0; c < columns; c++)
            {
                yield return new PlanPoint(
                    minX + (int)((2L * c + 1) * (maxX - minX) / (2L * columns)), minY + (int)((2L * r + 1) * (maxY - minY) / (2L * rows)));
            }
        }
    }
}
