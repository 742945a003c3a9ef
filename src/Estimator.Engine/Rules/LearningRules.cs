namespace Estimator.Engine.Rules;

/// <summary>How closed jobs change the tables.</summary>
/// <remarks>Source: our judgement for what the table counts as; NIST/SEMATECH e-Handbook of Statistical Methods 1.3.6.7.2 for Student's t, from memory.</remarks>
public static class LearningRules
{
    /// <summary>The share of cases in which an interval holds the true figure, percent.</summary>
    public const int IntervalPercent = 90;

    private const string Categories = "categories";

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

    /// <summary>Share of the table's spread that the classes of a phase have in common.</summary>
    public static RuleRow ClassShared => Table["class_shared"];

    /// <summary>Share of the doubt about a class that jobs take away where they are said to tell it apart.</summary>
    public static RuleRow ToldApart => Table["told_apart"];

    /// <summary>The classes by which the units of a phase are learned; their labels are the trade's words.</summary>
    public static IEnumerable<RuleRow> Classes => Table.Rows.Where(r => r.Has(Categories));

    /// <summary>The class of a category of the catalogue; one that no row names belongs to the last.</summary>
    /// <param name="category">The category.</param>
    public static string ClassOf(string category) => WordOf(Classes.FirstOrDefault(r => r.Text(Categories).Split(' ').Contains(category, StringComparer.Ordinal)) ?? Classes.Last());

    /// <summary>The row of a class; null where there is none of that name.</summary>
    /// <param name="word">Its word, such as cable.</param>
    public static RuleRow? Class(string word) => Classes.FirstOrDefault(r => WordOf(r) == word);

    /// <summary>Student's t for the interval; between two rows that of fewer degrees, which is the wider one.</summary>
    /// <param name="degrees">Degrees of freedom, at least those of the first row.</param>
    public static decimal StudentT(decimal degrees) => Table.Rows.Last(r => r.Has("degrees") && r.Number("degrees") <= degrees).Number("t");

    private static string WordOf(RuleRow row) => row.Key["class-".Length..];
}
