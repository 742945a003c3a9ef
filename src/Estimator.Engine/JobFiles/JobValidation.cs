using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.JobFiles;

/// <summary>Finds what a job that is well-formed JSON still gets wrong: sizes, references, geometry.</summary>
internal static class JobValidation
{
    private const int Most = 50;

    internal static ImmutableArray<JobProblem> Problems(Job job, string file)
    {
        var problems = new ProblemList(file);
        Amounts(job, problems);
        if (problems.Any)
        {
            return problems.First(Most);
        }

        foreach (var (level, l) in job.Levels.Select((x, i) => (x, i)))
        {
            foreach (var (room, r) in level.Rooms.Select((x, i) => (x, i)))
            {
                RoomValidation.Check(room, $"$.levels[{l}].rooms[{r}]", problems);
            }
        }

        if (!problems.Any)
        {
            References.Check(job, problems);
            Overlaps.Check(job, problems);
        }

        return problems.First(Most);
    }

    private static void Amounts(Job job, ProblemList problems)
    {
        problems.Range("$.levels", job.Levels.Length, 1, JobLimits.Many, "levels");
        problems.Range("$.panels", job.Panels.Length, 1, JobLimits.Many, "panels");
        problems.Range("$.equipment", job.Equipment.Length, 0, JobLimits.Many, "pieces of equipment");
        problems.Range("$.levels", job.Levels.Sum(l => l.Rooms.Length), 1, JobLimits.Rooms, "rooms");
        problems.Range("$.levels", job.Levels.SelectMany(l => l.Rooms).Sum(r => r.Counts.Sum(c => (long)Math.Max(0, c.Count)) + r.Placed.Length), 0, JobLimits.Devices, "devices");
        foreach (var (panel, p) in job.Panels.Select((x, i) => (x, i)))
        {
            problems.Range($"$.panels[{p}].rating_a", panel.RatingA.ToAmperes(), 15, JobLimits.PanelAmperes, "amperes");
            problems.Range($"$.panels[{p}].spaces", panel.Spaces, 1, JobLimits.Spaces, "spaces");
            problems.Range($"$.panels[{p}].tandem_spaces", panel.TandemSpaces, 0, panel.Spaces, "spaces");
            problems.Range($"$.panels[{p}].circuits", panel.Circuits.Length, 0, JobLimits.Many, "circuits");
            foreach (var (circuit, c) in panel.Circuits.Select((x, i) => (x, i)))
            {
                problems.Range($"$.panels[{p}].circuits[{c}].poles", circuit.Poles, 1, 2, "poles");
            }
        }

        foreach (var (level, l) in job.Levels.Select((x, i) => (x, i)))
        {
            problems.Length($"$.levels[{l}].ceiling_height", level.CeilingHeight, Length.FromFeet(4), Length.FromFeet(40));
            problems.Length($"$.levels[{l}].elevation", level.Elevation, Length.Zero, Length.FromFeet(200));
            problems.Length($"$.levels[{l}].framing.stud_spacing", level.Framing.StudSpacing, Length.FromInches(6), Length.FromFeet(8));
            problems.Length($"$.levels[{l}].framing.joist_spacing", level.Framing.JoistSpacing, Length.FromInches(6), Length.FromFeet(8));
        }

        foreach (var (equipment, e) in job.Equipment.Select((x, i) => (x, i)))
        {
            if (equipment.Volts is not (null or 120 or 240))
            {
                problems.Add($"$.equipment[{e}].volts", $"{equipment.Volts}", "120 or 240");
            }
        }

        if (job.Bid.ProfitPercent is { } profit && job.Bid.ProfitBasis is ProfitBasis.Margin && profit.ToHundredths() >= 100)
        {
            problems.Add("$.bid.profit_percent", $"{profit.ToHundredths()}", "a margin under 100 percent");
        }

        if (job.Bid.ProductivePercent is { } productive && productive.ToHundredths() is <= 0 or > 100)
        {
            problems.Add("$.bid.productive_percent", $"{job.Bid.ProductivePercent.Value.ToHundredths()}", "more than 0 to 100 percent");
        }
    }
}
