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

        var at = new Func<GridPoint?, WallSpot?, string>((point, wall) => point is { } p ? Point(pose, p) : wall is not null ? Spot(wall, outline, ring) : "");
        Content(key, job, outline.Room, at);
        return key.ToString();
    }

    private static string Point(Pose pose, GridPoint at) => Point(pose.ToCanonical(new PlanPoint(at.X.ToSixteenths(), at.Y.ToSixteenths())));

    private static IEnumerable<Opening> Openings(Job job, Room room) =>
        job.Levels.SelectMany(l => l.Openings).Where(o => o.Room == room.Id || o.OtherRoom == room.Id);

    private static string Opening(Opening opening, RoomOutline outline, CanonicalRing ring, Pose pose)
    {
        var spot = opening.At is { } at ? Point(pose, at)
            : opening.Wall is { } wall && opening.Room == outline.Room.Id ? Spot(wall, outline, ring) : "";
        return $"o{(int)opening.Kind}{spot}{Number(opening.Width.ToSixteenths())}";
    }

    private static void Content(StringBuilder key, Job job, Room room, Func<GridPoint?, WallSpot?, string> at)
    {
        key.Append(CultureInfo.InvariantCulture, $"w{(int)room.Walls}{(room.Finished ? "f" : "")}{(room.Building is null ? "" : "apart")}");
        foreach (var count in room.Counts.OrderBy(c => c.Kind).ThenBy(c => c.Serves).ThenBy(c => c.Count))
        {
            key.Append(CultureInfo.InvariantCulture, $"c{(int)count.Kind},{(int)count.Serves},{count.Count}");
        }

        Sorted(key, room.Placed.Select(p => $"p{(int)p.Kind},{(int)p.Serves}{at(p.At, p.Wall)}{Number(p.Height?.ToSixteenths() ?? 0)}"));
        Sorted(key, job.Equipment.Where(e => e.Room == room.Id).Select(e => $"e{(int)e.Kind}{at(e.At, e.Wall)}"));
        Sorted(key, room.Fixtures.Select(f => $"f{(int)f.Kind}{at(f.At, null)}"));
        Sorted(key, room.Counters.Select(c => $"t{(int)c.Kind}{Number(c.Length.ToSixteenths())}{Number(c.Depth.ToSixteenths())}{at(null, c.Wall)}"));
        foreach (var (panel, number) in job.Panels.Select((p, i) => (p, i)).Where(x => x.p.Room == room.Id))
        {
            key.Append(CultureInfo.InvariantCulture, $"panel{number}{at(panel.At, panel.Wall)}");
        }
    }

    private static void Sorted(StringBuilder key, IEnumerable<string> parts) => key.AppendJoin("", parts.Order(StringComparer.Ordinal));

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
