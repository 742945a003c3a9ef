using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Framing;

/// <summary>Spots along the sides of a room.</summary>
public static class WallSpots
{
    /// <summary>Length of a side, in sixteenths.</summary>
    public static int LengthOf(FramedRoom room, int side) => room.Corners[side].StraightDistanceTo(room.Corners[(side + 1) % room.Corners.Length]);

    /// <summary>The point at an offset along a side.</summary>
    public static PlanPoint PointAt(FramedRoom room, int side, int offset)
    {
        var (a, b, length) = (room.Corners[side], room.Corners[(side + 1) % room.Corners.Length], LengthOf(room, side));
        return new PlanPoint(a.X + PartWay(b.X - a.X, offset, length), a.Y + PartWay(b.Y - a.Y, offset, length));
    }

    /// <summary>The spot on the room's sides that is nearest a point; of two equally near the one on the first side.</summary>
    public static (int Side, int Offset) Nearest(FramedRoom room, PlanPoint point)
    {
        var best = (Distance: long.MaxValue, Side: 0, Offset: 0);
        for (var side = 0; side < room.Corners.Length; side++)
        {
            var offset = Project(room, side, point);
            var distance = (long)PointAt(room, side, offset).StraightDistanceTo(point);
            if (distance < best.Distance)
            {
                best = (distance, side, offset);
            }
        }

        return (best.Side, best.Offset);
    }

    /// <summary>The canonical side and offset of a spot that the user named by his own order of corners.</summary>
    public static (int Side, int Offset) Of(FramedRoom room, WallSpot spot, Pose pose)
    {
        var user = UserCorners(room, pose);
        var side = Math.Clamp(spot.Side - 1, 0, user.Length - 1);
        var (from, to) = (user[side], user[(side + 1) % user.Length]);
        for (var s = 0; s < room.Corners.Length; s++)
        {
            var (a, b) = (room.Corners[s], room.Corners[(s + 1) % room.Corners.Length]);
            if ((a, b) == (from, to))
            {
                return (s, Math.Clamp(spot.Offset.ToSixteenths(), 0, LengthOf(room, s)));
            }

            if ((b, a) == (from, to))
            {
                return (s, Math.Clamp(LengthOf(room, s) - spot.Offset.ToSixteenths(), 0, LengthOf(room, s)));
            }
        }

        return (0, 0);
    }

    /// <summary>The spot as the user would name it, by his own order of corners.</summary>
    public static WallSpot AsStated(FramedRoom room, int side, int offset, Pose pose)
    {
        var user = UserCorners(room, pose);
        var (a, b) = (room.Corners[side], room.Corners[(side + 1) % room.Corners.Length]);
        var same = Enumerable.Range(0, user.Length).FirstOrDefault(s => (user[s], user[(s + 1) % user.Length]) == (a, b), -1);
        var against = Enumerable.Range(0, user.Length).FirstOrDefault(s => (user[(s + 1) % user.Length], user[s]) == (a, b), 0);
        return same >= 0 ? new WallSpot(same + 1, Length.FromSixteenths(offset)) : new WallSpot(against + 1, Length.FromSixteenths(LengthOf(room, side) - offset));
    }

    // The framed corners hold the user's figures, but in canonical order; the user's own order comes from what he stated.
    private static PlanPoint[] UserCorners(FramedRoom room, Pose pose)
    {
        var grid = room.Corners.Select(pose.ToGrid).ToList();
        if (room.Source.Size is null)
        {
            return [.. room.Source.Corners.Select(c => pose.ToCanonical(new PlanPoint(c.X.ToSixteenths(), c.Y.ToSixteenths())))];
        }

        var (minX, maxX, minY, maxY) = (grid.Min(p => p.X), grid.Max(p => p.X), grid.Min(p => p.Y), grid.Max(p => p.Y));
        return [.. new PlanPoint[] { new(minX, minY), new(maxX, minY), new(maxX, maxY), new(minX, maxY) }.Select(pose.ToCanonical)];
    }

    private static int Project(FramedRoom room, int side, PlanPoint point)
    {
        var (a, b, length) = (room.Corners[side], room.Corners[(side + 1) % room.Corners.Length], LengthOf(room, side));
        if (length == 0)
        {
            return 0;
        }

        var along = (Int128)(b.X - a.X) * (point.X - a.X) + (Int128)(b.Y - a.Y) * (point.Y - a.Y);
        return Math.Clamp((int)(long)Rounded(along, length), 0, length);
    }

    // Half away from zero, so that a mirrored house rounds to the mirrored point.
    private static int PartWay(int span, int offset, int length) => length == 0 ? 0 : (int)(long)Rounded((Int128)span * offset, length);

    private static Int128 Rounded(Int128 value, Int128 unit) => value >= 0 ? (value + unit / 2) / unit : -((-value + unit / 2) / unit);
}
