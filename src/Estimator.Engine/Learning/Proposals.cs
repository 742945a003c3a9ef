using System.Collections.Immutable;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Learning;

/// <summary>Finds what closed jobs propose.</summary>
public static class Proposals
{
    /// <summary>A proposal for each phase, class in a phase and category that enough jobs tell of.</summary>
    /// <param name="jobs">The closed jobs.</param>
    public static ImmutableArray<Proposal> Of(IEnumerable<ClosedJob> jobs)
    {
        var all = jobs.SelectMany(j => j.Outcomes.Select(o => (j.JobId, Outcome: o))).GroupBy(x => (x.Outcome.Kind, x.Outcome.Key)).ToList();
        return
        [
            .. all.Select(g => Of(g.Key.Kind, g.Key.Key, [.. g.Select(x => new JobRatio(x.JobId, x.Outcome.Estimated, x.Outcome.Actual))])).Concat(all.SelectMany(g => ByClass(g.Key.Key, [.. g])))
                .Where(p => p.Jobs.Length >= LearningRules.LeastJobs.Number()).OrderBy(p => p.Kind).ThenBy(p => p.Key, StringComparer.Ordinal),
        ];
    }

    private static Proposal Of(LearnedKind kind, string key, ImmutableArray<JobRatio> ratios) => new(
        kind, key, kind is LearnedKind.Hours ? Pooling.Hours(ratios) : Pooling.Material(ratios), InOrder(ratios.Select(r => r.JobId)));

    // A phase of one class is the phase; a job that was closed before classes were kept tells of the phase alone. No unit is proposed at zero or below.
    private static IEnumerable<Proposal> ByClass(string phase, ImmutableArray<(string JobId, JobOutcome Outcome)> outcomes)
    {
        ImmutableArray<JobMix> mixes = [.. outcomes.Where(o => !o.Outcome.Classes.IsEmpty).Select(o => new JobMix(o.JobId, o.Outcome.Classes, o.Outcome.Actual))];
        var factors = ClassPooling.Hours(mixes);
        return factors.Length < 2 ? [] : factors.Where(f => f.Pooled.Factor > 0).Select(f => new Proposal(
            LearnedKind.Hours, UnitKey.Of(phase, f.Class), f.Pooled, InOrder(mixes.Where(m => m.Of(f.Class) > 0).Select(m => m.JobId)))
        { Apart = f.Apart });
    }

    private static ImmutableArray<string> InOrder(IEnumerable<string> jobs) => [.. jobs.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
}
