using System.Globalization;
using ClosedXML.Excel;

namespace Estimator.Documents.Workbooks;

/// <summary>One sheet while it is written. Text is always text; a live figure carries the engine's value beside its formula.</summary>
internal sealed class SheetPage(WorkbookDraft draft, IXLWorksheet sheet)
{
    private const double Inch = 0.5;

    private readonly RowHeights _heights = new();
    private double[] _widths = [];

    internal string Name => sheet.Name;

    internal SheetStyles Styles => draft.Styles;

    /// <summary>What each live cell shows before anybody recalculates.</summary>
    internal Dictionary<string, object> Shown { get; } = new(StringComparer.Ordinal);

    internal CellAt At(int row, int column) => new(sheet.Name, row, column);

    internal void Columns(params ReadOnlySpan<double> widths)
    {
        _widths = widths.ToArray();
        for (var i = 0; i < widths.Length; i++)
        {
            sheet.Column(i + 1).Width = widths[i];
        }
    }

    internal void Put(int row, int column, string text, CellLook look)
    {
        var safe = CellText.Of(text);
        Cell(row, column, look).SetValue(safe);
        _heights.Need(row, safe, _widths[column - 1], look);
    }

    internal void Put(int row, int column, decimal number, CellLook look)
    {
        Cell(row, column, look).SetValue(number);
        _heights.Need(row, 1, look);
    }

    /// <summary>Text over several columns.</summary>
    internal void Across(int row, int firstColumn, int lastColumn, string text, CellLook look)
    {
        var safe = CellText.Of(text);
        Cell(row, firstColumn, look).SetValue(safe);
        sheet.Range(row, firstColumn, row, lastColumn).Merge();
        _heights.Need(row, safe, _widths[(firstColumn - 1)..lastColumn].Sum(), look);
    }

    internal void Blank(int row, int column, CellLook look) => Cell(row, column, look);

    internal void Live(int row, int column, string formula, decimal shown, CellLook look) => Live(row, column, formula, (object)shown, look);

    internal void Live(int row, int column, string formula, string shown, CellLook look) => Live(row, column, formula, (object)shown, look);

    /// <summary>A figure that the reader may change: a number from zero.</summary>
    internal void Input(int row, int column, decimal? number, string format)
    {
        var cell = Cell(row, column, Styles.Number(format, SheetStyles.Tone.Input));
        if (number is { } value)
        {
            cell.SetValue(value);
        }
    }

    /// <summary>Only numbers from zero are taken in these cells.</summary>
    internal void Limit(int firstRow, int lastRow, int column)
    {
        var limits = sheet.Range(firstRow, column, lastRow, column).SetDataValidation();
        limits.Decimal.EqualOrGreaterThan(0);
        limits.ErrorTitle = "Not a number from zero";
        limits.ErrorMessage = "A number from zero is accepted here.";
    }

    /// <summary>The number of the row that explains a figure, as a link to it.</summary>
    internal void Explained(int row, int column, int target, bool total = false)
    {
        var cell = sheet.Cell(row, column);
        cell.SetValue(target);
        cell.Hyperlink = new XLHyperlink(string.Create(CultureInfo.InvariantCulture, $"Explanations!A{target}"));
        cell.Style = (total ? Styles.TotalLink : Styles.Link).Style;
    }

    internal void CallIt(string name, int row, int column) => sheet.Cell(row, column).AddToNamed(name, XLScope.Workbook);

    internal void Heads(int row, params ReadOnlySpan<string> heads)
    {
        for (var i = 0; i < heads.Length; i++)
        {
            var right = heads[i].StartsWith('>');
            Put(row, i + 1, right ? heads[i][1..] : heads[i], right ? Styles.HeadRight : Styles.Head);
        }
    }

    internal void Fill(int row, int firstColumn, int lastColumn, CellLook look)
    {
        for (var column = firstColumn; column <= lastColumn; column++)
        {
            Blank(row, column, look);
        }
    }

    internal void BreakAfter(int row) => sheet.PageSetup.AddHorizontalPageBreak(row);

    /// <summary>Paper, repeated rows, one page wide, footer with page numbers; panes frozen under the headings.</summary>
    internal void Print(bool landscape, int headingRows, int repeatFrom, bool onePage = false)
    {
        var setup = sheet.PageSetup;
        setup.PaperSize = XLPaperSize.LetterPaper;
        setup.PageOrientation = landscape ? XLPageOrientation.Landscape : XLPageOrientation.Portrait;
        setup.FitToPages(1, onePage ? 1 : 0);
        setup.Margins.SetLeft(Inch).SetRight(Inch).SetTop(Inch).SetBottom(0.75).SetHeader(0.3).SetFooter(0.35);
        // A footer's text must not begin with a figure, which would be read as part of the size of its type.
        Foot(setup.Footer.Left, $"{sheet.Name}: {CellText.ForFooter(draft.JobName)}. Planning aid; see the cautions.");
        Foot(setup.Footer.Right, "Page ");
        Foot(setup.Footer.Right, XLHFPredefinedText.PageNumber);
        Foot(setup.Footer.Right, " of ");
        Foot(setup.Footer.Right, XLHFPredefinedText.NumberOfPages);
        sheet.ShowGridLines = false;
        foreach (var (row, points) in _heights.All)
        {
            sheet.Row(row).Height = points;
        }

        if (headingRows > 0)
        {
            sheet.SheetView.FreezeRows(headingRows);
            setup.SetRowsToRepeatAtTop(repeatFrom, headingRows);
        }
    }

    private static void Foot(IXLHFItem place, string text) => Small(place.AddText(text));

    private static void Foot(IXLHFItem place, XLHFPredefinedText text) => Small(place.AddText(text));

    private static void Small(IXLRichString text)
    {
        text.FontName = SheetStyles.FontName;
        text.FontSize = 8;
    }

    private IXLCell Cell(int row, int column, CellLook look)
    {
        var cell = sheet.Cell(row, column);
        cell.Style = look.Style;
        return cell;
    }

    private void Live(int row, int column, string formula, object shown, CellLook look)
    {
        var cell = Cell(row, column, look);
        _heights.Need(row, 1, look);
        cell.FormulaA1 = formula;
        Shown.Add(cell.Address.ToString()!, shown);
    }
}
