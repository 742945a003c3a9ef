using System.Globalization;
using System.Text;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Framing;

/// <summary>A room's content as text that does not depend on how the house was drawn or listed: geometry first, what is in it next, names never.</summary>
internal static class RoomKey
{
    internal static string Of(Job job, RoomOutline outline, CanonicalRing ring, Pose pose)
    {
        var key = new StringBuilder();
        key.Append(Number(outline.Level));
        foreach (var corner in ring.Corners)
        {
            key.Append(Point(corner));
        }

        foreach (var hole in outline.Holes.Select(h => string.Concat(h.Select(pose.ToCanonical).Order().Select(Point))).Order(StringComparer.Ordinal))
        {
            key.Append('h').Append(hole);
        }

        key.Append('|').Append(Number((int)outline.Room.Kind)).Append(Number(outline.Ceiling.AsLength().Value.ToSixteenths()));
        foreach (var opening in Openings(job, outline.Room).Select(o => Opening(o, outline, ring, pose)).Order(StringComparer.Ordinal))
        {
            key.Append(opening);
        }

        Content(key, job, outline, ring, pose);
        return key.ToString();
    }

    internal static string Point(Pose pose, GridPoint at) => Point(pose.ToCanonical(new PlanPoint(at.X.ToSixteenths(), at.Y.ToSixteenths())));

    private static IEnumerable<Opening> Openings(Job job, Room room) =>
        job.Levels.SelectMany(l => l.Openings).Where(o => o.Room == room.Id || o.OtherRoom == room.Id);

    private static string Opening(Opening opening, RoomOutline outline, CanonicalRing ring, Pose pose)
    {
        var spot = opening.At is { } at ? Point(pose, at)
            : opening.Wall is { } wall && opening.Room == outline.Room.Id ? Spot(wall, outline, ring) : "";
        return $"o{(int)opening.Kind}{spot}{Number(opening.Width.ToSixteenths())}";
    }

    private static void Content(StringBuilder key, Job job, RoomOutline outline, CanonicalRing ring, Pose pose)
    {
        var room = outline.Room;
        string Place(GridPoint? at, WallSpot? wall) => at is { } point ? Point(pose, point) : wall is { } spot ? Spot(spot, outline, ring) : "";
        foreach (var count in room.Counts.OrderBy(c => c.Kind).ThenBy(c => c.Serves).ThenBy(c => c.Count))
        {
            key.Append(CultureInfo.InvariantCulture, $"c{(int)count.Kind},{(int)count.Serves},{count.Count}");
        }

        foreach (var placed in room.Placed.Select(p => $"p{(int)p.Kind},{(int)p.Serves}{Place(p.At, p.Wall)}{(p.Height is { } height ? Number(height.ToSixteenths()) : "")}").Order(StringComparer.Ordinal))
        {
            key.Append(placed);
        }

        foreach (var equipment in job.Equipment.Where(e => e.Room == room.Id).Select(e => $"e{(int)e.Kind}{Place(e.At, e.Wall)}").Order(StringComparer.Ordinal))
        {
            key.Append(equipment);
        }

        foreach (var fixture in room.Fixtures.Select(f => $"f{(int)f.Kind}{(f.At is { } at ? Point(pose, at) : "")}").Order(StringComparer.Ordinal))
        {
            key.Append(fixture);
        }

        foreach (var panel in job.Panels.Where(p => p.Room == room.Id).Select(p => $"panel{Place(p.At, p.Wall)}").Order(StringComparer.Ordinal))
        {
            key.Append(panel);
        }
    }

    private static string Spot(WallSpot wall, RoomOutline outline, CanonicalRing ring)
    {
        var (side, reversed) = ring.SideOf(Math.Max(0, wall.Side - 1) % Math.Max(1, outline.Corners.Length));
        var length = ring.Corners[side].StraightDistanceTo(ring.Corners[(side + 1) % ring.Corners.Length]);
        var offset = wall.Offset.ToSixteenths();
        return $"w{Number(side)}{Number(reversed ? length - offset : offset)}";
    }

    private static string Point(PlanPoint p) => $"({Number(p.X)}{Number(p.Y)})";

    // Shifted and padded, so that text order is number order.
    private static string Number(int value) => ((long)value + int.MaxValue).ToString("D10", CultureInfo.InvariantCulture);
}
