using Estimator.Engine.House;

namespace Estimator.Engine.Rules;

/// <summary>Which edition has which rule, under which article, and whether its text was seen.</summary>
public static class CodeRules
{
    private const string Building = "IRC ";

    private static RuleTable Table => RuleTables.Of("code_rules");

    /// <summary>Every rule with its editions.</summary>
    public static IEnumerable<RuleRow> All => Table.Rows;

    /// <summary>A rule in an edition.</summary>
    /// <exception cref="KeyNotFoundException">The table has no such rule.</exception>
    public static CodeRule For(string key, CodeEdition edition)
    {
        var row = Table[key];
        var year = ((int)edition).ToString(System.Globalization.CultureInfo.InvariantCulture);
        var article = row.Text(row.Has($"article_{year}") ? $"article_{year}" : "article");
        return new CodeRule(CodeOf(row), article, EditionOf(article, year), Lists(row, "in", year), Lists(row, "seen", year));
    }

    /// <summary>The code of the findings of a rule.</summary>
    public static string CodeOf(RuleRow row) => row.Has("code") ? row.Text("code") : row.Key;

    private static string EditionOf(string article, string year)
    {
        var pairs = RuleTables.Of("building_code");
        return !article.StartsWith(Building, StringComparison.Ordinal) ? $"NEC {year}"
            : pairs.Has($"nec_{year}") ? FormattableString.Invariant($"{Building}{pairs[$"nec_{year}"].Number("irc"):0}, beside NEC {year}")
            : $"{Building}beside NEC {year}";
    }

    private static bool Lists(RuleRow row, string column, string year) => row.Has(column) && row.Text(column).Contains(year, StringComparison.Ordinal);
}
