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
                RoomValidation.Check(room, level.CeilingHeight, $"$.levels[{l}].rooms[{r}]", problems);
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
        PowerValidation.Check(job, problems);
        PracticeValidation.Check(job.Practice, problems);
        BidValidation.Check(job.Bid, problems);
        PaymentValidation.Check(job.Payment, problems);
        foreach (var (amendment, a) in job.Code.Amendments.Select((x, i) => (x, i)))
        {
            problems.Range($"$.code.amendments[{a}].value", amendment.Value, 0, JobLimits.Many, "in the rule's unit");
        }

        foreach (var (level, l) in job.Levels.Select((x, i) => (x, i)))
        {
            problems.Length($"$.levels[{l}].ceiling_height", level.CeilingHeight, Length.FromFeet(4), Length.FromFeet(40));
            problems.Length($"$.levels[{l}].elevation", level.Elevation, Length.Zero, Length.FromFeet(200));
            problems.Length($"$.levels[{l}].framing.crawl_height", level.Framing.CrawlHeight, Length.FromInches(6), Length.FromFeet(12));
            problems.Length($"$.levels[{l}].framing.stud_depth", level.Framing.StudDepth, Length.FromInches(1), Length.FromFeet(2));
            problems.Length($"$.levels[{l}].framing.stud_spacing", level.Framing.StudSpacing, Length.FromInches(6), Length.FromFeet(8));
            problems.Length($"$.levels[{l}].framing.joist_spacing", level.Framing.JoistSpacing, Length.FromInches(6), Length.FromFeet(8));
        }
    }
}
