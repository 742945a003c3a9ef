using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;

namespace Estimator.Documents.Prices;

/// <summary>Reads CSV row by row.</summary>
internal static class CsvRows
{
    private static readonly string[] Separators = [",", ";", "\t", "|"];

    internal static IEnumerable<(int Row, string[] Cells)> Read(string path)
    {
        var encoding = IsUtf8(path) ? new UTF8Encoding(false, throwOnInvalidBytes: true) : Encoding.Latin1;
        using var reader = new StreamReader(path, encoding, detectEncodingFromByteOrderMarks: true);
        using var parser = new CsvParser(reader, new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = Separator(path, encoding),
            HasHeaderRecord = false,
            IgnoreBlankLines = true,
            BadDataFound = null,
            MaxFieldSize = PriceFileLimits.Cell,
        });
        while (Next(parser))
        {
            var start = parser.RawRow - parser.RawRecord.AsSpan().TrimEnd("\r\n").Count('\n');
            yield return (start, [.. parser.Record!.Select(c => c.Trim())]);
        }
    }

    private static bool Next(CsvParser parser)
    {
        try
        {
            return parser.Read();
        }
        catch (CsvHelperException e)
        {
            throw new InvalidDataException(FormattableString.Invariant(
                $"Row {parser.RawRow}: a cell is longer than {PriceFileLimits.Cell:#,0} characters, or its quotes are not closed. A file of commas, semicolons or tabs with quotes in pairs is accepted."), e);
        }
    }

    // The separator that the first lines hold most of.
    private static string Separator(string path, Encoding encoding)
    {
        using var reader = new StreamReader(path, encoding, detectEncodingFromByteOrderMarks: true);
        var start = new char[4096];
        var text = start.AsSpan(0, reader.ReadBlock(start)).ToString();
        return Separators.MaxBy(s => text.AsSpan().Count(s[0]))!;
    }

    private static bool IsUtf8(string path)
    {
        using var reader = new StreamReader(path, new UTF8Encoding(false, throwOnInvalidBytes: true), detectEncodingFromByteOrderMarks: true);
        var part = new char[8192];
        try
        {
            while (reader.Read(part) > 0)
            {
                // Reading alone tells.
            }

            return true;
        }
        catch (DecoderFallbackException)
        {
            return false;
        }
    }
}
