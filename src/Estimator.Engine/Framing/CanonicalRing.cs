using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Framing;

/// <summary>A room's corners in the canonical pose: counter-clockwise, the least corner first.</summary>
/// <param name="Corners">The corners.</param>
/// <param name="Order">Which of the user's corners each is.</param>
internal sealed record CanonicalRing(ImmutableArray<PlanPoint> Corners, ImmutableArray<int> Order)
{
    internal static CanonicalRing Of(RoomOutline outline, Pose pose)
    {
        var turned = outline.Corners.Select(pose.ToCanonical).ToImmutableArray();
        var order = Enumerable.Range(0, turned.Length).ToList();
        if (Polygons.DoubleArea(turned) < 0)
        {
            order.Reverse();
        }

        var first = order.IndexOf(order.MinBy(i => turned[i]));
        order = [.. order.Skip(first), .. order.Take(first)];
        return new CanonicalRing([.. order.Select(i => turned[i])], [.. order]);
    }

    internal static ImmutableArray<PlanPoint> Hole(ImmutableArray<PlanPoint> hole, Pose pose)
    {
        var turned = hole.Select(pose.ToCanonical).ToImmutableArray();
        return Polygons.DoubleArea(turned) > 0 ? [.. turned.Reverse()] : turned;
    }

    /// <summary>The canonical side of one of the user's sides, counted from 0, and whether it runs the other way.</summary>
    internal (int Side, bool Reversed) SideOf(int userSide)
    {
        var n = Order.Length;
        for (var s = 0; s < n; s++)
        {
            var (a, b) = (Order[s], Order[(s + 1) % n]);
            if (a == userSide && b == (userSide + 1) % n)
            {
                return (s, false);
            }

            if (b == userSide && a == (userSide + 1) % n)
            {
                return (s, true);
            }
        }

        return (0, false);
    }
}
