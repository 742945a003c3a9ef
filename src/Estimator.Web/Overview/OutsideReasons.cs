using Estimator.Engine;
using Estimator.Engine.Measures;
using Estimator.Engine.Wiring.Routing;
using Estimator.Web.Figures;
using Estimator.Web.Takeoff;

namespace Estimator.Web.Overview;

/// <summary>Why a figure lies outside its band: what the job itself says of it.</summary>
public static class OutsideReasons
{
    private const int Named = 2;

    /// <summary>How far the outlets of the job lie apart, and the panel from them.</summary>
    public static string Cable(JobEstimate estimate)
    {
        var (home, hops) = (Average(estimate, r => r.Role is RunRole.HomeRun), Average(estimate, r => r.Role is not RunRole.HomeRun));
        return $"Here a home run is {home} ft on average and a run from box to box {hops} ft.";
    }

    /// <summary>What most hours go into.</summary>
    public static string Hours(JobEstimate estimate) =>
        $"Most of them: {Largest(estimate, estimate.Labor.Lines.Select(l => (l.ItemId, l.Hours.Value)), v => $"{American.Fixed(v, 1)} h")}.";

    /// <summary>What most of the material is spent on.</summary>
    public static string Labor(JobEstimate estimate) =>
        $"Material is {American.WholeDollars(estimate.Purchase.Total.Value)}, most of it {Largest(estimate, estimate.Purchase.Lines.Where(l => l.Cost is not null).Select(l => (l.ItemId, l.Cost!.Value.Value.ToDollars())), American.WholeDollars)}.";

    private static string Average(JobEstimate estimate, Func<Run, bool> which)
    {
        var feet = estimate.Wiring.Runs.Where(which).Select(r => Length.FromNanometres(decimal.ToInt64(r.Total.Value)).ToFeet()).ToList();
        return feet.Count == 0 ? "0" : American.Number(feet.Average());
    }

    private static string Largest(JobEstimate estimate, IEnumerable<(string Item, decimal Value)> values, Func<decimal, string> text)
    {
        var categories = estimate.Takeoff.Lines.GroupBy(l => l.ItemId, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First().Category, StringComparer.Ordinal);
        return string.Join(" and ", values.GroupBy(v => categories.GetValueOrDefault(v.Item, "missing"), v => v.Value, StringComparer.Ordinal)
            .OrderByDescending(g => g.Sum()).Take(Named).Select(g => $"{ItemCategory.Words(g.Key).ToLowerInvariant()} {text(g.Sum())}"));
    }
}
