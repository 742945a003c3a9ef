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
    /// <summary>The offset along the other side that faces an own offset.</summary>
    public int Map(int offset) => Sum - offset;

    /// <summary>The stretches of a side that face sides of another room, no farther than the thickest wall.</summary>
    /// <remarks>Sides square to the house only; outlines are counter-clockwise, so facing sides run against each other.</remarks>
    public static IEnumerable<Facing> Between(FramedHouse house, int room, int side, int other, int thickest)
    {
        var (a, b) = SideOf(house, room, side);
        for (var s = 0; s < house.Rooms[other].Corners.Length; s++)
        {
            var (c, d) = SideOf(house, other, s);
            var found = a.X == b.X && c.X == d.X ? Along(other, s, (a.Y, b.Y, a.X), (c.Y, d.Y, c.X), b.Y > a.Y ? 1 : -1, thickest, rightIsPositive: true)
                : a.Y == b.Y && c.Y == d.Y ? Along(other, s, (a.X, b.X, a.Y), (c.X, d.X, c.Y), b.X > a.X ? 1 : -1, thickest, rightIsPositive: false)
                : null;
            if (found is not null)
            {
                yield return found;
            }
        }
    }

    private static Facing? Along(
        int other, int side, (int From, int To, int At) own, (int From, int To, int At) theirs, int direction, int thickest, bool rightIsPositive)
    {
        // The room lies left of its own side, so the wall lies right of it.
        var gap = (theirs.At - own.At) * direction * (rightIsPositive ? 1 : -1);
        if (gap < 0 || gap > thickest || Math.Sign(theirs.To - theirs.From) != -direction)
        {
            return null;
        }

        var from = Math.Max(0, (theirs.To - own.From) * direction);
        var to = Math.Min((own.To - own.From) * direction, (theirs.From - own.From) * direction);
        return to > from ? new Facing(other, side, from, to, gap, (theirs.From - own.From) * direction) : null;
    }

    private static (PlanPoint A, PlanPoint B) SideOf(FramedHouse house, int room, int side)
    {
        var corners = house.Rooms[room].Corners;
        return (corners[side], corners[(side + 1) % corners.Length]);
    }
}
