using System.Collections.Immutable;
using System.Globalization;
using Estimator.Engine;
using Estimator.Engine.Framing;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Web.Plans;

/// <summary>Draws runs as the framing leads them. Rises and drops have no length on a plan; what goes to another level ends in a riser.</summary>
internal static class RunDrawing
{
    internal static ImmutableArray<DrawnRun> Of(JobEstimate estimate, int level, SheetFrame frame)
    {
        var drawn = ImmutableArray.CreateBuilder<DrawnRun>();
        for (var c = 0; c < estimate.Wiring.Circuits.Length; c++)
        {
            var runs = estimate.Wiring.Circuits[c].Runs;
            for (var i = 0; i < runs.Length; i++)
            {
                var run = estimate.Wiring.Runs[runs[i]];
                if (run.Path.Turns.Any(t => t.Level == level))
                {
                    drawn.Add(Draw(estimate.House, run, runs[i], c, Number(c, i), level, frame));
                }
            }
        }

        return drawn.ToImmutable();
    }

    /// <summary>Circuit and place in it, both from 1.</summary>
    internal static string Number(int circuit, int place) => string.Create(CultureInfo.InvariantCulture, $"{circuit + 1}.{place + 1}");

    private static DrawnRun Draw(FramedHouse house, Run run, int index, int circuit, string number, int level, SheetFrame frame)
    {
        var parts = new List<ImmutableArray<SheetPoint>>();
        var part = new List<SheetPoint>();
        var risers = new List<DrawnRiser>();
        var turns = run.Path.Turns;
        for (var i = 0; i < turns.Length; i++)
        {
            var here = turns[i].Level == level;
            if (here)
            {
                Append(part, frame.Point(turns[i].Spot));
            }

            if (i + 1 < turns.Length && turns[i + 1].Level != turns[i].Level && (here || turns[i + 1].Level == level))
            {
                var (mine, other) = here ? (turns[i], turns[i + 1].Level) : (turns[i + 1], turns[i].Level);
                risers.Add(new DrawnRiser(frame.Point(mine.Spot), other > level, PlanDrawing.LevelName(house.Levels[other].Source)));
            }

            if (part.Count > 0 && (!here || i == turns.Length - 1))
            {
                parts.Add([.. part]);
                part.Clear();
            }
        }

        return new DrawnRun(index, circuit, number, run.Role is RunRole.HomeRun, [.. parts], [.. risers.Distinct()]);
    }

    private static void Append(List<SheetPoint> part, SheetPoint point)
    {
        if (part.Count == 0 || part[^1] != point)
        {
            part.Add(point);
        }
    }
}
