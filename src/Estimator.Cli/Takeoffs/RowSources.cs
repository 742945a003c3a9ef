using Estimator.Engine.Rules;

namespace Estimator.Cli.Takeoffs;

/// <summary>Says where a row of a table was read.</summary>
internal static class RowSources
{
    internal static string Of(string reference)
    {
        var (table, key) = reference.Split(':', 2) is [var t, var k] ? (t, k) : (reference, "");
        if (table.EndsWith(".csv", StringComparison.Ordinal))
        {
            return $"catalogue {table}, {key}";
        }

        var rules = RuleTable.Load(table);
        var row = rules.Has(key) ? rules[key] : rules.Has(key.Split('.')[0]) ? rules[key.Split('.')[0]] : null;
        var source = row?.Source ?? rules.File.Source;
        var cited = string.Join(", ", new[] { source.Title, source.Edition, source.Section }.Where(s => s.Length > 0));
        return $"table {table}, row {key}: {cited}; {row?.Basis ?? rules.File.Basis}";
    }
}
