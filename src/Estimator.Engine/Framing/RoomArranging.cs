using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Framing;

/// <summary>Sets rooms that have sizes and no place beside one another, in rows about as long as the whole is deep.</summary>
internal static class RoomArranging
{
    /// <summary>The lower-left corner of each room that was set, by room id.</summary>
    internal static IReadOnlyDictionary<string, PlanPoint> Arrange(Level level)
    {
        var loose = level.Rooms.Where(r => r.Size is not null && r.At is null)
            .OrderByDescending(r => Depth(r)).ThenByDescending(r => Width(r)).ThenBy(r => r.Kind).ThenBy(r => r.Counts.Sum(c => c.Count))
            .ThenBy(r => r.Name, StringComparer.Ordinal).ThenBy(r => r.Id, StringComparer.Ordinal).ToList();
        var places = new Dictionary<string, PlanPoint>(StringComparer.Ordinal);
        var rowLength = Roots.FloorOf(loose.Sum(r => (long)Width(r) * Depth(r)));
        var (x, y, deepest) = (0, Start(level), 0);
        foreach (var room in loose)
        {
            if (x > 0 && x + Width(room) > rowLength)
            {
                (x, y, deepest) = (0, y + deepest, 0);
            }

            places.Add(room.Id, new PlanPoint(x, y));
            (x, deepest) = (x + Width(room), Math.Max(deepest, Depth(room)));
        }

        return places;
    }

    private static int Start(Level level) => level.Rooms.SelectMany(Tops).DefaultIfEmpty(Length.Zero).Max().ToSixteenths();

    private static IEnumerable<Length> Tops(Room room) =>
        room.Size is { } size ? (room.At is { } at ? [at.Y + size.Depth] : []) : room.Corners.Select(c => c.Y);

    private static int Width(Room room) => room.Size!.Width.ToSixteenths();

    private static int Depth(Room room) => room.Size!.Depth.ToSixteenths();
}
