using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Framing;

/// <summary>Chooses the canonical pose.</summary>
internal static class PoseChoice
{
    internal static Pose For(Job job, List<RoomOutline> outlines)
    {
        var corners = outlines.SelectMany(o => o.Corners).DefaultIfEmpty().ToList();
        var (minX, maxX, minY, maxY) = (corners.Min(c => c.X), corners.Max(c => c.X), corners.Min(c => c.Y), corners.Max(c => c.Y));
        var poses =
            from swap in new[] { false, true }
            from flipX in new[] { false, true }
            from flipY in new[] { false, true }
            select Shifted(swap, flipX, flipY, minX, maxX, minY, maxY);
        return poses.Where(p => job.Pins.Pose is not { } pinned || pinned == new PinnedPose(p.SwapAxes, p.FlipX, p.FlipY)).MinBy(p => KeyOf(job, outlines, p), StringComparer.Ordinal)!;
    }

    // The canonical origin is the corner of the bounding box from which both canonical axes run inward.
    private static Pose Shifted(bool swap, bool flipX, bool flipY, int minX, int maxX, int minY, int maxY)
    {
        var (flipGridX, flipGridY) = swap ? (flipY, flipX) : (flipX, flipY);
        return new Pose(swap, flipX, flipY, new PlanPoint(flipGridX ? maxX : minX, flipGridY ? maxY : minY));
    }

    private static string KeyOf(Job job, List<RoomOutline> outlines, Pose pose)
    {
        var rooms = outlines.Select(o => RoomKey.Of(job, o, CanonicalRing.Of(o, pose), pose)).Order(StringComparer.Ordinal);
        var joists = job.Levels.OrderBy(l => l.Elevation).Select(l => Along(l.Framing.JoistDirection, pose));
        return string.Join('\n', rooms.Concat(joists));
    }

    private static string Along(JoistDirection direction, Pose pose) =>
        direction is JoistDirection.ShorterSpan ? "" : (direction is JoistDirection.AlongX) != pose.SwapAxes ? "x" : "y";
}
