namespace Estimator.Engine.Rules;

/// <summary>How closed jobs change the tables.</summary>
/// <remarks>Source: our judgement for what the table counts as; NIST/SEMATECH e-Handbook of Statistical Methods 1.3.6.7.2 for Student's t, from memory.</remarks>
public static class LearningRules
{
    /// <summary>The share of cases in which an interval holds the true figure, percent.</summary>
    public const int IntervalPercent = 90;

    private static RuleTable Table => RuleTables.Of("learning");

    /// <summary>The table counts as much as so many jobs.</summary>
    public static RuleRow TableJobs => Table["table_jobs"];

    /// <summary>Spread of hours before any job is known.</summary>
    public static RuleRow Spread => Table["spread"];

    /// <summary>That spread counts as much as so many jobs.</summary>
    public static RuleRow SpreadJobs => Table["spread_jobs"];

    /// <summary>Spread of material before any job is known.</summary>
    public static RuleRow WasteSpread => Table["waste_spread"];

    /// <summary>Estimated hours of a phase whose job counts by half.</summary>
    public static RuleRow SmallPartHours => Table["small_part_hours"];

    /// <summary>Closed jobs before anything is proposed.</summary>
    public static RuleRow LeastJobs => Table["least_jobs"];

    /// <summary>Student's t for the interval; between two rows that of fewer degrees, which is the wider one.</summary>
    /// <param name="degrees">Degrees of freedom, at least those of the first row.</param>
    public static decimal StudentT(decimal degrees) => Table.Rows.Last(r => r.Has("degrees") && r.Number("degrees") <= degrees).Number("t");
}
