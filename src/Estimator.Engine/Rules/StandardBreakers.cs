using System.Collections.Immutable;

namespace Estimator.Engine.Rules;

/// <summary>Standard ratings of overcurrent devices.</summary>
/// <remarks>Source: NEC 240.6(A).</remarks>
public static class StandardBreakers
{
    private static RuleTable Table => RuleTables.Of("standard_breakers");

    /// <summary>At what share a continuous load counts.</summary>
    public static RuleRow ContinuousPercent => Table["continuous_percent"];

    /// <summary>The ratings, smallest first.</summary>
    public static ImmutableArray<RuleRow> All => [.. Table.Rows.Where(r => r.Key.StartsWith('a'))];

    /// <summary>The smallest rating, in amperes.</summary>
    public static decimal Smallest => All[0].Number();

    /// <summary>The largest rating of the table, in amperes.</summary>
    public static decimal Largest => All[^1].Number();

    /// <summary>The smallest rating of at least so many amperes; the largest where none is.</summary>
    public static RuleRow AtLeast(decimal amperes) => All.FirstOrDefault(r => r.Number() >= amperes) ?? All[^1];

    /// <summary>The largest rating of at most so many amperes; the smallest where none is.</summary>
    public static RuleRow AtMost(decimal amperes) => All.LastOrDefault(r => r.Number() <= amperes) ?? All[0];
}
