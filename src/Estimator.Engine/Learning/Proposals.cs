using System.Collections.Immutable;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Learning;

/// <summary>Finds what closed jobs propose.</summary>
public static class Proposals
{
    /// <summary>A proposal for each phase and category that enough jobs tell of.</summary>
    /// <param name="jobs">The closed jobs.</param>
    public static ImmutableArray<Proposal> Of(IEnumerable<ClosedJob> jobs) =>
    [
        .. jobs.SelectMany(j => j.Outcomes.Select(o => (Job: j.JobId, Outcome: o))).GroupBy(x => (x.Outcome.Kind, x.Outcome.Key))
            .Where(g => g.Select(x => x.Job).Distinct(StringComparer.Ordinal).Count() >= LearningRules.LeastJobs.Number())
            .OrderBy(g => g.Key.Kind).ThenBy(g => g.Key.Key, StringComparer.Ordinal).Select(g => Of(g.Key.Kind, g.Key.Key, [.. g.Select(x => new JobRatio(x.Job, x.Outcome.Estimated, x.Outcome.Actual))])),
    ];

    private static Proposal Of(LearnedKind kind, string key, ImmutableArray<JobRatio> ratios) => new(
        kind, key, kind is LearnedKind.Hours ? Pooling.Hours(ratios) : Pooling.Material(ratios), [.. ratios.Select(r => r.JobId).Order(StringComparer.Ordinal)]);
}
