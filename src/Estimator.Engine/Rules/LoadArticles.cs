namespace Estimator.Engine.Rules;

/// <summary>Where each rule of the load calculation stands, by edition.</summary>
/// <remarks>Source: NEC article 220, in 2026 article 120; a 2026 place that was not seen says so.</remarks>
public static class LoadArticles
{
    private const int NotYetSeenFrom = 2026;

    /// <summary>The article of a rule in an edition, by its year.</summary>
    public static string Of(string rule, int year) => RuleTables.Of("load_articles")[rule].Text(year switch
    {
        < 2020 => "nec_2017",
        < 2023 => "nec_2020",
        < NotYetSeenFrom => "nec_2023",
        _ => "nec_2026",
    });

    /// <summary>Whether the rule was seen in the edition.</summary>
    public static bool Seen(string rule, int year) => year < NotYetSeenFrom || RuleTables.Of("load_articles")[rule].Flag("seen_2026");
}
