using Estimator.Engine.Framing;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Layout;

/// <summary>Whether the room leaves the clear space in front of a panel.</summary>
/// <remarks>The panel may stand anywhere in its width. What stands in the room is not looked at. Source: NEC 110.26(A).</remarks>
internal static class WorkingSpace
{
    private const int HalfPanelInches = 8;
    private const int Steps = 4;

    /// <summary>Whether a space of the asked width and height, and of a depth, is clear before a spot on a wall.</summary>
    internal static bool Clear(FramedHouse house, int room, int side, int offset, Length depth)
    {
        var framed = house.Rooms[room];
        if (framed.Ceiling < PlacingLimits.WorkingHeight.Inches().ToSixteenths())
        {
            return false;
        }

        var half = PlacingLimits.WorkingWidth.Inches().ToSixteenths() / 2;
        var shift = half - Length.FromInches(HalfPanelInches).ToSixteenths();
        return new[] { 0, shift, -shift, shift / 2, -shift / 2 }.Any(s => Holds(framed, side, offset + s - half, offset + s + half, depth.ToSixteenths()));
    }

    private static bool Holds(FramedRoom room, int side, int from, int to, int depth)
    {
        var length = WallSpots.LengthOf(room, side);
        if (length == 0)
        {
            return false;
        }

        var (a, b) = (room.Corners[side], room.Corners[(side + 1) % room.Corners.Length]);
        for (var i = 0; i <= Steps; i++)
        {
            for (var j = 0; j <= Steps; j++)
            {
                var (along, deep) = (from + (to - from) * i / Steps, depth * j / Steps);
                if (!Polygons.Holds(room, new PlanPoint(a.X + Part(b.X - a.X, along, length) - Part(b.Y - a.Y, deep, length), a.Y + Part(b.Y - a.Y, along, length) + Part(b.X - a.X, deep, length))))
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static int Part(int span, int along, int length) => (int)((long)span * along / length);
}
