using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Framing;

/// <summary>Exact geometry of outlines whose corners are whole sixteenths of an inch.</summary>
public static class Polygons
{
    /// <summary>Twice the area, in square sixteenths; positive for a counter-clockwise outline.</summary>
    public static Int128 DoubleArea(ImmutableArray<PlanPoint> corners)
    {
        Int128 sum = 0;
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
            sum += (Int128)a.X * b.Y - (Int128)b.X * a.Y;
        }

        return sum;
    }

    /// <summary>Length of the outline, in sixteenths, each side rounded to the nearest.</summary>
    public static long Perimeter(ImmutableArray<PlanPoint> corners) =>
        Enumerable.Range(0, corners.Length).Sum(i => (long)corners[i].StraightDistanceTo(corners[(i + 1) % corners.Length]));

    /// <summary>Whether a point lies in an outline or on it.</summary>
    public static bool Holds(ImmutableArray<PlanPoint> corners, PlanPoint point) => Holds(corners, 2L * point.X, 2L * point.Y);

    /// <summary>Whether a point lies in a room, its holes left out; the outline itself belongs to the room.</summary>
    public static bool Holds(FramedRoom room, PlanPoint point) => HoldsHalf(room, 2L * point.X, 2L * point.Y);

    /// <summary>Whether a point given in half sixteenths lies in a room, its holes left out.</summary>
    internal static bool HoldsHalf(FramedRoom room, long halfX, long halfY) =>
        Holds(room.Corners, halfX, halfY) && !room.Holes.Any(h => Holds(h, halfX, halfY) && !OnOutline(h, halfX, halfY));

    private static bool Holds(ImmutableArray<PlanPoint> corners, long x, long y)
    {
        if (OnOutline(corners, x, y))
        {
            return true;
        }

        var inside = false;
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
            var (ax, ay, bx, by) = (2L * a.X, 2L * a.Y, 2L * b.X, 2L * b.Y);
            if (ay > y != by > y)
            {
                var side = (Int128)(bx - ax) * (y - ay) - (Int128)(x - ax) * (by - ay);
                inside ^= by > ay ? side > 0 : side < 0;
            }
        }

        return inside;
    }

    private static bool OnOutline(ImmutableArray<PlanPoint> corners, long x, long y)
    {
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
            var (ax, ay, bx, by) = (2L * a.X, 2L * a.Y, 2L * b.X, 2L * b.Y);
            if ((Int128)(bx - ax) * (y - ay) == (Int128)(x - ax) * (by - ay)
                && Math.Min(ax, bx) <= x && x <= Math.Max(ax, bx) && Math.Min(ay, by) <= y && y <= Math.Max(ay, by))
            {
                return true;
            }
        }

        return false;
    }
}
