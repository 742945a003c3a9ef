using System.Collections.Concurrent;
using Estimator.Engine.Rules;

namespace Estimator.Documents.Explanations;

/// <summary>Says where a row of a table was read.</summary>
public static class RowSources
{
    private static readonly ConcurrentDictionary<string, RuleTable> Tables = new(StringComparer.Ordinal);

    /// <summary>Table, row, publication and basis in one sentence.</summary>
    /// <param name="reference">Table and row as an explanation names them: <c>table:key</c>.</param>
    public static string Of(string reference)
    {
        var (table, key) = Split(reference);
        if (IsCatalogue(table))
        {
            return $"catalogue {table}, {key}";
        }

        var (source, basis) = Cited(table, key);
        var cited = string.Join(", ", new[] { source.Title, source.Edition, source.Section }.Where(s => s.Length > 0));
        return $"table {table}, row {key}: {cited}; {basis}";
    }

    /// <summary>Article, section or table of the publication; empty where the row names none.</summary>
    /// <param name="reference">Table and row: <c>table:key</c>.</param>
    public static string ArticleOf(string reference)
    {
        var (table, key) = Split(reference);
        return IsCatalogue(table) ? "" : Cited(table, key).Source.Section;
    }

    private static (RuleSource Source, string Basis) Cited(string table, string key)
    {
        var rules = Tables.GetOrAdd(table, RuleTable.Load);
        var row = rules.Has(key) ? rules[key] : rules.Has(key.Split('.')[0]) ? rules[key.Split('.')[0]] : null;
        return (row?.Source ?? rules.File.Source, row?.Basis ?? rules.File.Basis);
    }

    private static (string Table, string Key) Split(string reference) => reference.Split(':', 2) is [var t, var k] ? (t, k) : (reference, "");

    private static bool IsCatalogue(string table) => table.EndsWith(".csv", StringComparison.Ordinal);
}
