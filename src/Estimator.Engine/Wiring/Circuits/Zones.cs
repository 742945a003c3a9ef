using System.Collections.Immutable;
using Estimator.Engine.Framing;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Cuts each level of each building into zones by floor area alone, so that no edit of devices moves a zone's border and an edit disturbs one zone only.</summary>
internal static class Zones
{
    /// <summary>The zone of each room, numbered from the lowest level.</summary>
    internal static ImmutableArray<int> Of(FramedHouse house)
    {
        var zones = new int[house.Rooms.Length];
        var next = 0;
        foreach (var level in house.Levels)
        {
            foreach (var part in level.Rooms.GroupBy(r => house.Rooms[r].Source.Building).SelectMany(b => Split(house, [.. b], PracticeDefaults.ZoneArea.Number())))
            {
                foreach (var room in part)
                {
                    zones[room] = next;
                }

                next++;
            }
        }

        return [.. zones];
    }

    private static IEnumerable<ImmutableArray<int>> Split(FramedHouse house, ImmutableArray<int> rooms, decimal most)
    {
        if (rooms.Length < 2 || rooms.Sum(r => house.Rooms[r].AreaSquareFeet.Value) <= most)
        {
            return [rooms];
        }

        var centres = rooms.ToDictionary(r => r, r => Centre(house.Rooms[r]));
        var wide = Span(centres.Values.Select(c => c.X)) >= Span(centres.Values.Select(c => c.Y));
        ImmutableArray<int> sorted = [.. rooms.OrderBy(r => wide ? centres[r].X : centres[r].Y).ThenBy(r => wide ? centres[r].Y : centres[r].X).ThenBy(r => r)];
        var cut = HalfTheArea(house, sorted);
        return [.. Split(house, sorted[..cut], most), .. Split(house, sorted[cut..], most)];
    }

    private static int HalfTheArea(FramedHouse house, ImmutableArray<int> rooms)
    {
        var half = rooms.Sum(r => house.Rooms[r].AreaSquareFeet.Value) / 2;
        var (sum, cut) = (0m, 0);
        while (cut < rooms.Length - 1 && (cut == 0 || sum < half))
        {
            sum += house.Rooms[rooms[cut++]].AreaSquareFeet.Value;
        }

        return cut;
    }

    private static PlanPoint Centre(FramedRoom room) => new(
        (room.Corners.Min(c => c.X) + room.Corners.Max(c => c.X)) / 2, (room.Corners.Min(c => c.Y) + room.Corners.Max(c => c.Y)) / 2);

    private static int Span(IEnumerable<int> values)
    {
        var all = values.ToList();
        return all.Max() - all.Min();
    }
}
