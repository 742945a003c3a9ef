using Estimator.Engine.House;

namespace Estimator.Engine.JobFiles;

/// <summary>Refuses alternates without a name, packages of alternates that are not there, and more of either than anybody would price.</summary>
internal static class AlternateValidation
{
    internal static void Check(Job job, ProblemList problems)
    {
        problems.Range("$.alternates", job.Alternates.Length, 0, JobLimits.Alternates, "alternates");
        problems.Range("$.alternate_packages", job.AlternatePackages.Length, 0, JobLimits.Alternates, "packages");
        var known = job.Alternates.Select(a => a.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var (alternate, a) in job.Alternates.Select((x, i) => (x, i)))
        {
            if (string.IsNullOrWhiteSpace(alternate.Name))
            {
                problems.Add($"$.alternates[{a}].name", "nothing", "a name, as the customer reads it");
            }

            problems.Range($"$.alternates[{a}].changes", alternate.Changes.Length, 1, JobLimits.Many, "changes");
        }

        foreach (var (package, p) in job.AlternatePackages.Select((x, i) => (x, i)))
        {
            foreach (var (id, i) in package.Alternates.Select((x, i) => (x, i)).Where(x => !known.Contains(x.x)))
            {
                problems.Add($"$.alternate_packages[{p}].alternates[{i}]", $"'{id}'", "the id of an alternate of this job");
            }
        }
    }
}
