using Estimator.Engine.Measures;

namespace Estimator.Engine.Framing;

/// <summary>A stretch of one side of a room that faces a side of another room through a wall.</summary>
/// <param name="Room">The other room.</param>
/// <param name="Side">Its side.</param>
/// <param name="From">Start of the stretch along the own side.</param>
/// <param name="To">End of the stretch along the own side.</param>
/// <param name="Gap">Thickness of the wall.</param>
/// <param name="Sum">Own offset and the other's offset of facing points add up to this.</param>
public sealed record Facing(int Room, int Side, int From, int To, int Gap, int Sum)
{
    /// <summary>How far two sides may be out of parallel over the stretch that they share, as a part of the thickest wall: about half an inch in 16, as drawn plans are.</summary>
    private const int OutOfParallelPart = 30;

    /// <summary>The offset along the other side that faces an own offset.</summary>
    public int Map(int offset) => Sum - offset;

    /// <summary>The stretches of a side that face sides of another room, no farther than the thickest wall.</summary>
    /// <remarks>Outlines are counter-clockwise, so facing sides run against each other and the wall lies right of each.</remarks>
    public static IEnumerable<Facing> Between(FramedHouse house, int room, int side, int other, int thickest)
    {
        var (a, b) = SideOf(house, room, side);
        var length = a.StraightDistanceTo(b);
        var slack = thickest / OutOfParallelPart;
        for (var s = 0; s < house.Rooms[other].Corners.Length && length > 0; s++)
        {
            var (c, d) = SideOf(house, other, s);
            var (start, end) = (Along(a, b, length, c), Along(a, b, length, d));
            var (near, far) = (Right(a, b, length, c), Right(a, b, length, d));
            var (from, to) = (Math.Max(0, end), Math.Min(length, start));
            if (to <= from || Math.Min(near, far) < -slack || Math.Max(near, far) > thickest || Math.Abs(near - far) > slack)
            {
                continue;
            }

            var theirs = c.StraightDistanceTo(d);
            yield return new Facing(other, s, Math.Max(from, start - theirs), to, Math.Max(0, (near + far) / 2), start);
        }
    }

    private static int Along(PlanPoint a, PlanPoint b, int length, PlanPoint p) =>
        Rounded((Int128)(b.X - a.X) * (p.X - a.X) + (Int128)(b.Y - a.Y) * (p.Y - a.Y), length);

    private static int Right(PlanPoint a, PlanPoint b, int length, PlanPoint p) =>
        Rounded((Int128)(b.Y - a.Y) * (p.X - a.X) - (Int128)(b.X - a.X) * (p.Y - a.Y), length);

    private static int Rounded(Int128 value, int unit) => (int)(value >= 0 ? (value + unit / 2) / unit : -((-value + unit / 2) / unit));

    private static (PlanPoint A, PlanPoint B) SideOf(FramedHouse house, int room, int side)
    {
        var corners = house.Rooms[room].Corners;
        return (corners[side], corners[(side + 1) % corners.Length]);
    }
}
