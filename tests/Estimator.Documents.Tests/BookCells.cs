using System.Globalization;
using System.IO.Compression;
using System.Xml.Linq;
using ClosedXML.Excel;

namespace Estimator.Documents.Tests;

/// <summary>Reads a workbook back.</summary>
public static class BookCells
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    public static XLWorkbook Open(byte[] book) => new(new MemoryStream(book));

    /// <summary>The value that stands beside each formula, as a reader sees it who does not calculate.</summary>
    public static IEnumerable<(string Sheet, int Row, int Column, string Formula, string Shown)> Formulas(byte[] book)
    {
        using var open = Open(book);
        using var zip = new ZipArchive(new MemoryStream(book));
        for (var s = 1; s <= open.Worksheets.Count; s++)
        {
            var sheet = open.Worksheet(s);
            using var part = zip.GetEntry($"xl/worksheets/sheet{s}.xml")!.Open();
            foreach (var cell in XDocument.Load(part).Descendants(Main + "c").Where(c => c.Element(Main + "f") is not null))
            {
                var address = sheet.Cell(cell.Attribute("r")!.Value).Address;
                yield return (sheet.Name, address.RowNumber, address.ColumnNumber, cell.Element(Main + "f")!.Value, cell.Element(Main + "v")!.Value);
            }
        }
    }

    /// <summary>Where a named cell stands.</summary>
    public static (int Row, int Column) Named(byte[] book, string name)
    {
        using var zip = new ZipArchive(new MemoryStream(book));
        using var part = zip.GetEntry("xl/workbook.xml")!.Open();
        var place = XDocument.Load(part).Descendants(Main + "definedName").Single(n => n.Attribute("name")!.Value == name).Value;
        var cell = place.Split('!')[1].Split(':')[0].Split('$');
        return (int.Parse(cell[2], CultureInfo.InvariantCulture), XLHelper.GetColumnNumberFromLetter(cell[1]));
    }

    /// <summary>The book with figures changed as a reader would.</summary>
    public static byte[] Changed(byte[] book, Action<XLWorkbook> change)
    {
        using var open = Open(book);
        change(open);
        using var stream = new MemoryStream();
        open.SaveAs(stream);
        return stream.ToArray();
    }

    public static IXLCell Named(this XLWorkbook book, string name) => book.NamedRange(name).Ranges.Single().FirstCell();

    public static decimal Number(string text) => decimal.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
