using System.Collections.Immutable;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.JobFiles;

/// <summary>Refuses two rooms of a level that lie over one another by more than a plan's wall lines do.</summary>
/// <remarks>The overlap is measured on a grid of samples over the smaller room, its holes and the other's left out.</remarks>
internal static class Overlaps
{
    private const int Samples = 24;

    internal static void Check(Job job, ProblemList problems)
    {
        foreach (var (level, l) in job.Levels.Select((x, i) => (x, i)))
        {
            var rooms = level.Rooms.Select((room, index) => (Room: room, Index: index, Outline: Outlines.Of(room))).Where(r => !r.Outline.IsEmpty)
                .Select(r => (r.Room, r.Index, r.Outline, Box: Box(r.Outline))).ToList();
            for (var a = 0; a < rooms.Count; a++)
            {
                for (var b = a + 1; b < rooms.Count; b++)
                {
                    var (small, large) = Area(rooms[a].Box) <= Area(rooms[b].Box) ? (rooms[a], rooms[b]) : (rooms[b], rooms[a]);
                    if (Meet(small.Box, large.Box) && Share((small.Room, small.Outline, small.Box), (large.Room, large.Outline)) is var share && share > JobLimits.OverlapPercent)
                    {
                        problems.Add(
                            $"$.levels[{l}].rooms[{rooms[b].Index}]", $"{share}% of {small.Room.Id} over {large.Room.Id}", $"rooms of a level side by side; up to {JobLimits.OverlapPercent}% at wall lines");
                    }
                }
            }
        }
    }

    private static int Share((Room Room, ImmutableArray<PlanPoint> Outline, (int X0, int X1, int Y0, int Y1) Box) small, (Room Room, ImmutableArray<PlanPoint> Outline) large)
    {
        var (own, both) = (0, 0);
        for (var i = 0; i < Samples; i++)
        {
            for (var j = 0; j < Samples; j++)
            {
                var p = new PlanPoint(
                    small.Box.X0 + (int)((2L * i + 1) * (small.Box.X1 - small.Box.X0) / (2 * Samples)), small.Box.Y0 + (int)((2L * j + 1) * (small.Box.Y1 - small.Box.Y0) / (2 * Samples)));
                if (Holds(small.Room, small.Outline, p))
                {
                    own++;
                    both += Holds(large.Room, large.Outline, p) ? 1 : 0;
                }
            }
        }

        return own == 0 ? 0 : 100 * both / own;
    }

    private static bool Holds(Room room, ImmutableArray<PlanPoint> outline, PlanPoint p) =>
        Polygons.Holds(outline, p) && !room.Holes.Any(h => Polygons.Holds(Outlines.Of(h), p));

    private static (int X0, int X1, int Y0, int Y1) Box(ImmutableArray<PlanPoint> ring) => (ring.Min(p => p.X), ring.Max(p => p.X), ring.Min(p => p.Y), ring.Max(p => p.Y));

    private static long Area((int X0, int X1, int Y0, int Y1) box) => ((long)box.X1 - box.X0) * ((long)box.Y1 - box.Y0);

    private static bool Meet((int X0, int X1, int Y0, int Y1) a, (int X0, int X1, int Y0, int Y1) b) => a.X0 < b.X1 && b.X0 < a.X1 && a.Y0 < b.Y1 && b.Y0 < a.Y1;
}
