namespace Estimator.Engine.Rules;

/// <summary>Labor factors.</summary>
/// <remarks>Source: common practice, no source, but for the rows that name one.</remarks>
public static class LaborFactors
{
    private static RuleTable Table => RuleTables.Of("labor_factors");

    /// <summary>Rough-in fished in finished walls.</summary>
    public static RuleRow Fished => Table["fished"];

    /// <summary>Occupied house.</summary>
    public static RuleRow Occupied => Table["occupied"];

    /// <summary>Rough-in hours of each further device in a box.</summary>
    public static RuleRow FurtherRough => Table["further_rough"];

    /// <summary>Trim-out of each further device in a box, percent of its own.</summary>
    public static RuleRow FurtherTrimPercent => Table["further_trim_percent"];

    /// <summary>The factor for ceiling work at a height in feet.</summary>
    public static RuleRow AtHeight(decimal feet) => Table.Rows.First(r => r.Has("to_ft") && r.Number("to_ft") >= feet);
}
