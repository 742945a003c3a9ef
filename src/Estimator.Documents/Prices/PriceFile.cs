namespace Estimator.Documents.Prices;

/// <summary>Reads the rows of a supplier's price file, one at a time, so that a long file takes little memory.</summary>
public static class PriceFile
{
    // The first bytes of a ZIP archive, which a workbook is. Source: PKWARE APPNOTE, 4.3.7.
    private static ReadOnlySpan<byte> Zip => "PK\u0003\u0004"u8;

    /// <summary>Whether a file is a workbook, by its first bytes; else it is read as CSV.</summary>
    /// <param name="path">The file.</param>
    public static bool IsWorkbook(string path)
    {
        using var stream = File.OpenRead(path);
        Span<byte> start = stackalloc byte[Zip.Length];
        return stream.ReadAtLeast(start, start.Length, throwOnEndOfStream: false) == start.Length && start.SequenceEqual(Zip);
    }

    /// <summary>The rows that hold anything, each with its row number in the file, from 1. Formulas are not worked out: what stands beside them is read.</summary>
    /// <param name="path">The file: a workbook, whose first sheet is read, or CSV in UTF-8 or Windows-1252, with commas, semicolons or tabs.</param>
    /// <exception cref="InvalidDataException">The file can't be read, or is beyond <see cref="PriceFileLimits"/>; the message says where and what is accepted.</exception>
    public static IEnumerable<(int Row, string[] Cells)> Rows(string path)
    {
        if (new FileInfo(path).Length is > PriceFileLimits.Bytes and var bytes)
        {
            throw new InvalidDataException(FormattableString.Invariant($"The file has {bytes:#,0} bytes; up to {PriceFileLimits.Bytes:#,0} are accepted. Ask for a file of the items that you buy."));
        }

        var count = 0;
        foreach (var (row, cells) in IsWorkbook(path) ? WorkbookRows.Read(path) : CsvRows.Read(path))
        {
            if (cells.Length > PriceFileLimits.Columns)
            {
                throw new InvalidDataException(FormattableString.Invariant($"Row {row} has {cells.Length} columns; up to {PriceFileLimits.Columns} are accepted."));
            }

            if (cells.FirstOrDefault(c => c.Length > PriceFileLimits.Cell) is { } wide)
            {
                throw new InvalidDataException(FormattableString.Invariant($"Row {row} has a cell of {wide.Length:#,0} characters; up to {PriceFileLimits.Cell:#,0} are accepted. A quote that is not closed makes one cell of many."));
            }

            if (!cells.Any(c => c.Length > 0))
            {
                continue;
            }

            if (++count > PriceFileLimits.Rows)
            {
                throw new InvalidDataException(FormattableString.Invariant($"The file has more than {PriceFileLimits.Rows:#,0} rows; up to that many are accepted. Ask for a file of the items that you buy, or cut it in two."));
            }

            yield return (row, cells);
        }
    }
}
