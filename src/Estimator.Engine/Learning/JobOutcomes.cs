using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Learning;

/// <summary>Sets what was written down of a job against its estimate.</summary>
public static class JobOutcomes
{
    /// <summary>The parts of a job for which both sides are known: phases with hours, categories of the items whose use was written down.</summary>
    /// <param name="estimate">The estimate, made with the tables as they are shipped.</param>
    /// <param name="hours">Hours that were worked.</param>
    /// <param name="material">Material that was used.</param>
    public static ImmutableArray<JobOutcome> Of(JobEstimate estimate, IEnumerable<ActualHours> hours, IEnumerable<UsedMaterial> material)
    {
        var used = material.ToDictionary(m => m.Item, m => m.Quantity, StringComparer.Ordinal);
        return
        [
            .. hours.GroupBy(h => h.Phase).OrderBy(g => g.Key).Where(g => estimate.Labor.ByPhase.ContainsKey(g.Key))
                .Select(g => new JobOutcome(LearnedKind.Hours, UnitKey.Of(g.Key), estimate.Labor.ByPhase[g.Key].Value, g.Sum(h => h.Hours)) { Classes = Classes(estimate, g.Key) }).Where(o => o.Estimated > 0),
            .. estimate.Takeoff.Lines.Where(l => used.ContainsKey(l.ItemId)).GroupBy(l => l.Category, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal)
                .Select(g => new JobOutcome(LearnedKind.Material, g.Key, g.Sum(l => l.Quantity.Value), g.Select(l => l.ItemId).Distinct(StringComparer.Ordinal).Sum(i => used[i])))
                .Where(o => o.Estimated > 0),
        ];
    }

    private static ImmutableArray<ClassHours> Classes(JobEstimate estimate, WorkPhase phase)
    {
        var categories = estimate.Takeoff.Lines.DistinctBy(l => l.ItemId, StringComparer.Ordinal).ToDictionary(l => l.ItemId, l => l.Category, StringComparer.Ordinal);
        return
        [
            .. estimate.Labor.Lines.Where(l => l.Phase == phase).GroupBy(l => LearningRules.ClassOf(categories.GetValueOrDefault(l.ItemId, "")), StringComparer.Ordinal)
                .Select(g => new ClassHours(g.Key, g.Sum(l => l.Hours.Value))).Where(c => c.Hours > 0).OrderBy(c => c.Class, StringComparer.Ordinal),
        ];
    }
}
