using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.JobFiles;

/// <summary>Outlines of rooms as the checks of a file need them.</summary>
internal static class Outlines
{
    internal static PlanPoint Snap(GridPoint p) => new(p.X.ToSixteenths(), p.Y.ToSixteenths());

    internal static ImmutableArray<PlanPoint> Of(ImmutableArray<GridPoint> ring) => [.. ring.Select(Snap)];

    /// <summary>The outline of a room that has a place; empty where the program arranges it.</summary>
    internal static ImmutableArray<PlanPoint> Of(Room room)
    {
        if (room.Size is not { } size)
        {
            return Of(room.Corners);
        }

        if (room.At is not { } at)
        {
            return [];
        }

        var (x, y) = (at.X.ToSixteenths(), at.Y.ToSixteenths());
        var (w, d) = (size.Width.ToSixteenths(), size.Depth.ToSixteenths());
        return [new PlanPoint(x, y), new PlanPoint(x + w, y), new PlanPoint(x + w, y + d), new PlanPoint(x, y + d)];
    }

    internal static bool CrossesItself(ImmutableArray<PlanPoint> ring)
    {
        for (var i = 0; i < ring.Length; i++)
        {
            for (var j = i + 2; j < ring.Length; j++)
            {
                if ((i > 0 || j < ring.Length - 1) && Cross(ring[i], ring[i + 1], ring[j], ring[(j + 1) % ring.Length]))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Whether two segments cross in a point inside both.</summary>
    internal static bool Cross(PlanPoint a, PlanPoint b, PlanPoint c, PlanPoint d) =>
        Math.Sign(Turn(a, b, c)) * Math.Sign(Turn(a, b, d)) < 0 && Math.Sign(Turn(c, d, a)) * Math.Sign(Turn(c, d, b)) < 0;

    private static long Turn(PlanPoint a, PlanPoint b, PlanPoint c) => ((long)b.X - a.X) * ((long)c.Y - a.Y) - ((long)b.Y - a.Y) * ((long)c.X - a.X);
}
