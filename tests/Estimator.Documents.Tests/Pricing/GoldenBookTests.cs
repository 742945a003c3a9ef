using System.Globalization;
using System.Text;
using ClosedXML.Excel;

namespace Estimator.Documents.Tests.Pricing;

/// <summary>Cells, formulas and formats of the workbooks of the basement sample, as readable text.</summary>
public sealed class GoldenBookTests(RecalculatedBooks books)
{
    private const int RowsOfExplanations = 60;

    [Theory]
    [InlineData("basement", "bid-basement-finish.golden.txt")]
    [InlineData("order", "purchase-basement-finish.golden.txt")]
    public void Cells_OfTheBasement_AreThoseOfTheGoldenFile(string book, string file)
    {
        using var open = BookCells.Open(books[book]);
        GoldenText.AssertEqual(file, Dump(open));
    }

    // Row numbers of explanations change with any node of the engine, so links are named and not counted, and the last sheet shows how it begins.
    private static string Dump(XLWorkbook book)
    {
        var text = new StringBuilder();
        foreach (var sheet in book.Worksheets)
        {
            var setup = sheet.PageSetup;
            text.Append(CultureInfo.InvariantCulture, $"== {sheet.Name}: {setup.PageOrientation}, {setup.PagesWide} wide {setup.PagesTall} tall, repeats rows {setup.FirstRowToRepeatAtTop}-{setup.LastRowToRepeatAtTop}, frozen {sheet.SheetView.SplitRow}\n");
            text.Append(CultureInfo.InvariantCulture, $"widths {string.Join(' ', sheet.ColumnsUsed().Select(c => c.Width.ToString("0.##", CultureInfo.InvariantCulture)))}\n");
            foreach (var cell in sheet.CellsUsed().Where(c => sheet.Name != "Explanations" || c.Address.RowNumber <= RowsOfExplanations))
            {
                var content = cell.HasHyperlink ? "-> explanation" : cell.HasFormula ? $"={cell.FormulaA1}" : cell.DataType is XLDataType.Text ? $"'{cell.GetString()}'" : cell.GetDouble().ToString("0.######", CultureInfo.InvariantCulture);
                text.Append(CultureInfo.InvariantCulture, $"{cell.Address} {content.ReplaceLineEndings("\\n")} [{cell.Style.NumberFormat.Format}]{(cell.Style.Font.Bold ? " bold" : "")}\n");
            }
        }

        foreach (var name in book.NamedRanges.OrderBy(n => n.Name, StringComparer.Ordinal))
        {
            text.Append(CultureInfo.InvariantCulture, $"name {name.Name} {name.RefersTo}\n");
        }

        return text.ToString();
    }
}
