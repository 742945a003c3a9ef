using System.Collections.Immutable;

namespace Estimator.Engine.Rules;

/// <summary>Labor factors.</summary>
/// <remarks>
/// A row says in which phases it acts (<c>phases</c>, or all) and of which set it is (<c>set</c>): of a set the largest counts alone.
/// Source: common practice, no source, but for the rows that name one.
/// </remarks>
public static class LaborFactors
{
    private static RuleTable Table => RuleTables.Of("labor_factors");

    /// <summary>Rough-in fished in finished walls.</summary>
    public static RuleRow Fished => Table["fished"];

    /// <summary>Finished walls of plaster and lath; an alternative to <see cref="Fished"/>.</summary>
    public static RuleRow Plaster => Table["plaster"];

    /// <summary>Metal studs.</summary>
    public static RuleRow MetalStuds => Table["metal_studs"];

    /// <summary>Masonry, furred out.</summary>
    public static RuleRow FurredMasonry => Table["furred_masonry"];

    /// <summary>Cable in a tight attic.</summary>
    public static RuleRow TightAttic => Table["tight_attic"];

    /// <summary>Cable in a crawl space.</summary>
    public static RuleRow Crawl => Table["crawl"];

    /// <summary>Cable in a low crawl space; an alternative to <see cref="Crawl"/>.</summary>
    public static RuleRow LowCrawl => Table["low_crawl"];

    /// <summary>Devices of a room that repeats another one.</summary>
    public static RuleRow Repeated => Table["repeated"];

    /// <summary>Occupied house.</summary>
    public static RuleRow Occupied => Table["occupied"];

    /// <summary>Small job.</summary>
    public static RuleRow SmallJob => Table["small_job"];

    /// <summary>Material carried up.</summary>
    public static RuleRow CarriedUp => Table["carried_up"];

    /// <summary>The most that factors come to together.</summary>
    public static RuleRow Cap => Table["cap"];

    /// <summary>Rough-in hours of each further device in a box.</summary>
    public static RuleRow FurtherRough => Table["further_rough"];

    /// <summary>Trim-out of each further device in a box, percent of its own.</summary>
    public static RuleRow FurtherTrimPercent => Table["further_trim_percent"];

    /// <summary>Pulling alone, percent of the hours of a cable that take in the bores.</summary>
    public static RuleRow PullingPercent => Table["pulling_percent"];

    /// <summary>Hours of a bored hole, where they are counted apart.</summary>
    public static RuleRow BoreHours => Table["bore_hours"];

    /// <summary>The factor for ceiling work at a height in feet.</summary>
    public static RuleRow AtHeight(decimal feet) => Table.Rows.First(r => r.Has("to_ft") && r.Number("to_ft") >= feet);

    /// <summary>The factor for so many weeks of overtime in a row.</summary>
    public static RuleRow Overtime(int weeks) => Table.Rows.First(r => r.Has("to_weeks") && r.Number("to_weeks") >= weeks);

    /// <summary>Whether a factor acts in a phase, by its name in snake case.</summary>
    public static bool ActsIn(RuleRow factor, string phase) => !factor.Has("phases") || factor.Text("phases").Split(' ').Contains(phase, StringComparer.Ordinal);

    /// <summary>The factors that act in a phase together, in their order; of alternatives the largest alone.</summary>
    public static ImmutableArray<RuleRow> Together(IEnumerable<RuleRow> factors, string phase) =>
    [
        .. factors.Where(f => ActsIn(f, phase)).GroupBy(f => f.Has("set") ? f.Text("set") : f.Key, StringComparer.Ordinal).Select(g => g.MaxBy(f => f.Number())!),
    ];
}
