using System.Globalization;
using System.IO.Compression;
using System.Xml;
using ClosedXML.Excel;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Estimator.Documents.Prices;

/// <summary>Reads the first sheet of a workbook row by row, cell by cell, without holding the sheet.</summary>
/// <remarks>Source of the form: ECMA-376 part 1, 18.3.1 (worksheets) and 18.4 (shared strings).</remarks>
internal static class WorkbookRows
{
    // Day 0 of the two ways in which a workbook counts days. Source: ECMA-376 part 1, 18.17.4.1.
    private static readonly DateOnly Count1900 = new(1899, 12, 30);
    private static readonly DateOnly Count1904 = new(1904, 1, 1);

    private const string NotAWorkbook = "The file begins like a workbook but can't be read as one. An .xlsx workbook without a password, or a CSV file, is accepted.";

    internal static DateOnly DayZero(string path)
    {
        RefuseBombs(path);
        using var document = Open(path);
        return document.WorkbookPart?.Workbook?.WorkbookProperties?.Date1904?.Value == true ? Count1904 : Count1900;
    }

    internal static IEnumerable<(int Row, string[] Cells)> Read(string path)
    {
        RefuseBombs(path);
        using var document = Open(path);
        var shared = SharedTexts(document);
        using var reader = OpenXmlReader.Create(FirstSheet(document));
        var last = 0;
        while (Next(reader))
        {
            if (reader.ElementType == typeof(Row) && reader.IsStartElement)
            {
                var row = int.TryParse(Attribute(reader, "r"), NumberStyles.None, CultureInfo.InvariantCulture, out var stated) ? stated : last + 1;
                last = row;
                yield return (row, Cells(reader, row, shared));
            }
        }
    }

    private static string[] Cells(OpenXmlReader reader, int row, List<string> shared)
    {
        var cells = new List<string>();
        if (!reader.ReadFirstChild())
        {
            return [];
        }

        do
        {
            if (reader.ElementType != typeof(Cell) || !reader.IsStartElement)
            {
                continue;
            }

            var cell = (Cell)reader.LoadCurrentElement()!;
            var column = cell.CellReference?.Value is { } reference ? ColumnOf(reference) : cells.Count + 1;
            if (column > PriceFileLimits.Columns)
            {
                throw new InvalidDataException(FormattableString.Invariant($"Row {row} has a cell in column {column}; up to {PriceFileLimits.Columns} columns are accepted."));
            }

            while (cells.Count < column)
            {
                cells.Add("");
            }

            cells[column - 1] = Text(cell, shared).Trim();
        }
        while (reader.ReadNextSibling());
        return [.. cells];
    }

    private static string Text(Cell cell, List<string> shared)
    {
        var value = cell.CellValue?.Text ?? "";
        if (cell.DataType?.Value == CellValues.InlineString)
        {
            return cell.InlineString?.InnerText ?? "";
        }

        if (cell.DataType?.Value == CellValues.SharedString)
        {
            return int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var at) && at < shared.Count ? shared[at] : "";
        }

        // Numbers stand in the file as doubles: 0.1 may read 0.10000000000000001. Fifteen digits are what a spreadsheet shows and keeps.
        return cell.DataType?.Value is null or CellValues.Number && double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? number.ToString("0.###############", CultureInfo.InvariantCulture)
            : value;
    }

    private static List<string> SharedTexts(SpreadsheetDocument document)
    {
        var texts = new List<string>();
        if (document.WorkbookPart?.SharedStringTablePart is not { } part)
        {
            return texts;
        }

        using var reader = OpenXmlReader.Create(part);
        var length = 0;
        while (Next(reader))
        {
            if (reader.ElementType == typeof(SharedStringItem) && reader.IsStartElement)
            {
                var text = ((SharedStringItem)reader.LoadCurrentElement()!).InnerText;
                length += text.Length;
                if (length > PriceFileLimits.SharedText)
                {
                    throw new InvalidDataException(FormattableString.Invariant($"The workbook holds more than {PriceFileLimits.SharedText:#,0} characters of text; up to that many are accepted."));
                }

                texts.Add(text);
            }
        }

        return texts;
    }

    private static int ColumnOf(string reference) => XLHelper.GetColumnNumberFromLetter(string.Concat(reference.TakeWhile(char.IsAsciiLetter)));

    private static string? Attribute(OpenXmlReader reader, string name) => reader.Attributes.FirstOrDefault(a => a.LocalName == name).Value;

    private static WorksheetPart FirstSheet(SpreadsheetDocument document) =>
        document.WorkbookPart?.Workbook?.Sheets?.Elements<Sheet>().FirstOrDefault()?.Id?.Value is { } id && document.WorkbookPart.GetPartById(id) is WorksheetPart sheet
            ? sheet
            : throw new InvalidDataException("The workbook has no sheet with cells; a workbook whose first sheet holds the prices is accepted.");

    private static SpreadsheetDocument Open(string path)
    {
        try
        {
            return SpreadsheetDocument.Open(path, isEditable: false);
        }
        catch (Exception e) when (e is OpenXmlPackageException or FileFormatException or InvalidDataException or XmlException or InvalidOperationException or ArgumentException)
        {
            throw new InvalidDataException(NotAWorkbook, e);
        }
    }

    private static bool Next(OpenXmlReader reader)
    {
        try
        {
            return reader.Read();
        }
        catch (XmlException e)
        {
            throw new InvalidDataException(NotAWorkbook, e);
        }
    }

    // A small file may unpack to more than a disk holds.
    private static void RefuseBombs(string path)
    {
        try
        {
            using var zip = ZipFile.OpenRead(path);
            if (zip.Entries.Sum(e => e.Length) is > PriceFileLimits.Unpacked and var bytes)
            {
                throw new InvalidDataException(FormattableString.Invariant($"The workbook unpacks to {bytes:#,0} bytes; up to {PriceFileLimits.Unpacked:#,0} are accepted."));
            }
        }
        catch (InvalidDataException e) when (e.InnerException is null && !e.Message.StartsWith("The workbook", StringComparison.Ordinal))
        {
            throw new InvalidDataException(NotAWorkbook, e);
        }
    }
}
