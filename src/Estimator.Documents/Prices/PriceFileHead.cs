using System.Collections.Immutable;
using ClosedXML.Excel;
using Estimator.Engine.Purchase.PriceFiles;

namespace Estimator.Documents.Prices;

/// <summary>The beginning of a price file, from which a person matches its columns.</summary>
/// <param name="HeadingRow">The row of the headings, from 1; the rows above it are passed over.</param>
/// <param name="Headings">The headings, from the left, no two alike.</param>
/// <param name="Sample">The first rows below them.</param>
/// <param name="DayZero">Day 0 of a workbook's day numbers; null for CSV.</param>
public sealed record PriceFileHead(int HeadingRow, ImmutableArray<string> Headings, ImmutableArray<(int Row, ImmutableArray<string> Cells)> Sample, DateOnly? DayZero)
{
    private const int RowsLookedAt = 30;
    private const int RowsShown = 5;

    /// <summary>Reads the beginning of a file.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="InvalidDataException">The file can't be read, or holds no row below its headings.</exception>
    public static PriceFileHead Read(string path)
    {
        var rows = PriceFile.Rows(path).Take(RowsLookedAt).ToList();
        var at = ColumnGuess.HeadingRow([.. rows.Select(r => r.Cells)]);
        if (rows.Count <= at + 1)
        {
            throw new InvalidDataException("The file holds no row below its headings; a row of headings and a row for each price are accepted.");
        }

        var width = rows.Skip(at).Max(r => r.Cells.Length);
        return new PriceFileHead(
            rows[at].Row, Named(rows[at].Cells, width), [.. rows.Skip(at + 1).Take(RowsShown).Select(r => (r.Row, (ImmutableArray<string>)[.. r.Cells]))],
            PriceFile.IsWorkbook(path) ? WorkbookRows.DayZero(path) : null);
    }

    /// <summary>The matching to begin with: the remembered one where its headings are all there, else the guess.</summary>
    /// <param name="remembered">How this supplier's file was matched before.</param>
    public ColumnMatching Start(ColumnMatching remembered)
    {
        ArgumentNullException.ThrowIfNull(remembered);
        return remembered.Headings.Count > 0 && remembered.Headings.Values.All(h => ColumnMatching.IsSaid(h) || Headings.Contains(h, StringComparer.Ordinal)) ? remembered : ColumnGuess.Of(Headings);
    }

    private static ImmutableArray<string> Named(string[] cells, int width)
    {
        var names = new List<string>();
        for (var i = 0; i < width; i++)
        {
            var name = i < cells.Length && cells[i].Length > 0 ? cells[i] : $"Column {XLHelper.GetColumnLetterFromNumber(i + 1)}";
            names.Add(names.Contains(name, StringComparer.Ordinal) ? $"{name}, column {XLHelper.GetColumnLetterFromNumber(i + 1)}" : name);
        }

        return [.. names];
    }
}
