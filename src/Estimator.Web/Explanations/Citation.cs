using System.Collections.Concurrent;
using Estimator.Engine.Rules;

namespace Estimator.Web.Explanations;

/// <summary>Where a cell of a rule table or of the catalogue was read.</summary>
/// <param name="Source">Publication, edition and section, or the catalogue's file and row.</param>
/// <param name="Basis">On what the figure rests, such as <c>published</c> or <c>common practice, no source</c>.</param>
public sealed record Citation(string Source, string Basis)
{
    /// <summary>Stands for the firm's stock in the place of a table: its rows are what lies on the shelf.</summary>
    public const string Shelf = "shelf";

    /// <summary>Stands for what was written down of a job in the place of a table.</summary>
    public const string Actuals = "actuals";

    private static readonly ConcurrentDictionary<string, RuleTable> Tables = new(StringComparer.Ordinal);

    /// <summary>Source and basis in one line; a published source needs no further word.</summary>
    public string Sentence => Basis is "published" or "" ? Source : Source.Length == 0 ? Basis : $"{Source}; {Basis}";

    /// <summary>The citation of a leaf.</summary>
    /// <param name="reference">Table and row as <c>table:key</c>.</param>
    public static Citation Of(string reference)
    {
        var (table, key) = reference.Split(':', 2) is [var t, var k] ? (t, k) : (reference, "");
        if (table.EndsWith(".csv", StringComparison.Ordinal))
        {
            return new Citation($"Catalogue, {table[..^".csv".Length]}: {key}", "");
        }

        if (table == Shelf)
        {
            return new Citation($"Stock on hand: {key}", "");
        }

        if (table == Actuals)
        {
            return new Citation($"Written down on the job: {key}", "");
        }

        var rules = Tables.GetOrAdd(table, RuleTable.Load);
        var row = rules.Has(key) ? rules[key] : rules.Has(key.Split('.')[0]) ? rules[key.Split('.')[0]] : null;
        var source = row?.Source ?? rules.File.Source;
        return new Citation(string.Join(", ", new[] { source.Title, source.Edition, source.Section }.Where(s => s.Length > 0)), row?.Basis ?? rules.File.Basis);
    }
}
