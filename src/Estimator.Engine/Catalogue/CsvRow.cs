using System.Collections.Immutable;

namespace Estimator.Engine.Catalogue;

/// <summary>A row of a CSV file.</summary>
internal sealed class CsvRow(string file, int line, ImmutableArray<string> columns, ImmutableArray<string> fields)
{
    /// <summary>Whether the file has a column, which not every file must have.</summary>
    internal bool Has(string column) => columns.Contains(column);

    internal string this[string column] => fields[columns.IndexOf(column)];

    /// <summary>What was found in a cell and what is accepted there.</summary>
    internal string Problem(string column, string found, string accepted) =>
        $"{file}, row {line}, {column}: found '{(found.Length > 40 ? found[..40] : found)}', {accepted} is accepted.";
}
