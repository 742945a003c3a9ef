using System.Globalization;
using CsvHelper;
using Estimator.Documents.Tables;
using Estimator.Engine;
using Estimator.TestKit;

namespace Estimator.Documents.Tests.Sums;

/// <summary>A table as CSV, read back: each row by the names of its columns.</summary>
internal static class CsvTable
{
    internal static List<Dictionary<string, string>> Read(JobEstimate estimate, JobTable table) => Read(JobTables.Write(estimate, table, Catalogues.Shipped));

    internal static List<Dictionary<string, string>> Read(string text)
    {
        using var parser = new CsvParser(new StringReader(text), CultureInfo.InvariantCulture);
        parser.Read();
        var (heads, rows) = (parser.Record!, new List<Dictionary<string, string>>());
        while (parser.Read())
        {
            rows.Add(heads.Zip(parser.Record!).ToDictionary(c => c.First, c => c.Second, StringComparer.Ordinal));
        }

        return rows;
    }

    /// <summary>Sum of a column; an empty cell is nothing.</summary>
    internal static decimal Sum(this IEnumerable<Dictionary<string, string>> rows, string column) => rows.Sum(r => r[column].Length == 0 ? 0 : BookCells.Number(r[column]));
}
