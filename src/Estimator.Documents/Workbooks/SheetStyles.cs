using ClosedXML.Excel;

namespace Estimator.Documents.Workbooks;

/// <summary>The named styles of all sheets: ink and hairlines, copper for what a reader may change.</summary>
/// <remarks>Arial is in every office, and Liberation Sans has its widths elsewhere; both have figures of equal width.</remarks>
internal sealed class SheetStyles : IDisposable
{
    internal const string FontName = "Arial";
    internal const double FontSize = 9;
    internal const string Dollars = "#,##0.00";
    internal const string UnitDollars = "#,##0.00##";
    internal const string Whole = "#,##0";
    internal const string Tenths = "#,##0.0";
    internal const string Hours = "#,##0.00";
    internal const string Plain = "0.####";
    private const string Priced = "\"$\"#,##0.00";

    private static readonly XLColor Ink = XLColor.FromHtml("#211C16");
    private static readonly XLColor InkSoft = XLColor.FromHtml("#5A5146");
    private static readonly XLColor Hairline = XLColor.FromHtml("#D8CDB9");
    private static readonly XLColor Copper = XLColor.FromHtml("#91461A");
    private static readonly XLColor CopperTint = XLColor.FromHtml("#F8EFE4");
    private static readonly XLColor Sunk = XLColor.FromHtml("#F4EEE3");
    private static readonly XLColor Mend = XLColor.FromHtml("#A71B39");

    // A style lives on a cell of this book, and is given to other cells by value.
    private readonly XLWorkbook _book = new();
    private readonly IXLWorksheet _sheet;
    private readonly Dictionary<(string Format, Tone Tone), CellLook> _numbers = [];
    private int _next;

    internal SheetStyles()
    {
        _sheet = _book.AddWorksheet("styles");
        Title = Make(s => Bold(s, 16));
        Subtitle = Make(s => s.Font.FontColor = InkSoft);
        Section = Make(s =>
        {
            Bold(s, 11);
            Under(s, Ink);
        });
        Head = Make(Heading);
        HeadRight = Make(s =>
        {
            Heading(s);
            s.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
        });
        Text = Make(Row);
        OneLine = Make(s => Under(s, Hairline));
        Soft = Make(s =>
        {
            Row(s);
            s.Font.FontColor = InkSoft;
            s.Alignment.Indent = 1;
        });
        Band = Make(s =>
        {
            Bold(s, FontSize);
            s.Fill.BackgroundColor = Sunk;
        });
        TotalText = Make(Total);
        TotalSoft = Make(s =>
        {
            Total(s);
            s.Font.Bold = false;
            s.Font.FontColor = InkSoft;
            s.Alignment.Indent = 1;
        });
        Link = Make(s => Linked(s, Row));
        TotalLink = Make(s => Linked(s, Total));
        Note = Make(s => Wrapped(s, InkSoft));
        Body = Make(s => Wrapped(s, Ink));
        BodyBold = Make(s =>
        {
            Wrapped(s, Ink);
            s.Font.Bold = true;
        });
        Warning = Make(s =>
        {
            Wrapped(s, Mend);
            s.Font.Bold = true;
        });
        Price = Make(s =>
        {
            Bold(s, 20);
            Left(s);
        });
        RangeEnd = Make(Left);
        Steps = [.. Enumerable.Range(0, 9).Select(depth => Make(s =>
        {
            Row(s);
            s.Alignment.Indent = depth;
        }))];
    }

    /// <summary>What a number is to the reader.</summary>
    internal enum Tone
    {
        /// <summary>A figure of a row.</summary>
        Row = 1,

        /// <summary>A figure that the reader may change.</summary>
        Input,

        /// <summary>A total.</summary>
        Total,
    }

    internal CellLook Title { get; }

    internal CellLook Subtitle { get; }

    internal CellLook Section { get; }

    internal CellLook Head { get; }

    internal CellLook HeadRight { get; }

    internal CellLook Text { get; }

    internal CellLook OneLine { get; }

    internal CellLook Soft { get; }

    internal CellLook Band { get; }

    internal CellLook TotalText { get; }

    internal CellLook TotalSoft { get; }

    internal CellLook Link { get; }

    internal CellLook TotalLink { get; }

    internal CellLook Note { get; }

    internal CellLook Body { get; }

    internal CellLook BodyBold { get; }

    internal CellLook Warning { get; }

    internal CellLook Price { get; }

    internal CellLook RangeEnd { get; }

    /// <summary>Row text by depth in a tree.</summary>
    internal CellLook[] Steps { get; }

    /// <summary>A number in a format.</summary>
    internal CellLook Number(string format, Tone tone = Tone.Row)
    {
        if (!_numbers.TryGetValue((format, tone), out var look))
        {
            look = Make(s =>
            {
                Toned(s, tone);
                s.Alignment.WrapText = false;
                s.NumberFormat.Format = format;
                s.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
            });
            _numbers.Add((format, tone), look);
        }

        return look;
    }

    /// <inheritdoc/>
    public void Dispose() => _book.Dispose();

    // Properties only: the setters that chain hand on a copy, and a style that is held loses what they set.
    private CellLook Make(Action<IXLStyle> set)
    {
        var style = _sheet.Cell(++_next, 1).Style;
        style.Font.FontName = FontName;
        style.Font.FontSize = FontSize;
        style.Font.FontColor = Ink;
        style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
        set(style);
        return new CellLook(style, style.Font.FontSize, style.Alignment.WrapText);
    }

    private static void Toned(IXLStyle style, Tone tone)
    {
        switch (tone)
        {
            case Tone.Row:
                Row(style);
                break;
            case Tone.Input:
                Row(style);
                style.Font.FontColor = Copper;
                style.Fill.BackgroundColor = CopperTint;
                break;
            case Tone.Total:
                Total(style);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(tone), tone, "There is no such tone.");
        }
    }

    private static void Heading(IXLStyle style)
    {
        Wrapped(style, InkSoft);
        style.Font.Bold = true;
        style.Font.FontSize = 8;
        style.Alignment.Vertical = XLAlignmentVerticalValues.Bottom;
        Under(style, Ink);
    }

    private static void Row(IXLStyle style)
    {
        Under(style, Hairline);
        style.Alignment.WrapText = true;
    }

    private static void Total(IXLStyle style)
    {
        style.Border.TopBorder = XLBorderStyleValues.Thin;
        style.Border.TopBorderColor = Ink;
        style.Font.Bold = true;
        style.Alignment.WrapText = true;
    }

    private static void Linked(IXLStyle style, Action<IXLStyle> under)
    {
        under(style);
        style.Font.Bold = false;
        style.Font.FontColor = Copper;
        style.Alignment.WrapText = false;
        style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
    }

    private static void Wrapped(IXLStyle style, XLColor color)
    {
        style.Font.FontColor = color;
        style.Alignment.WrapText = true;
    }

    private static void Bold(IXLStyle style, double points)
    {
        style.Font.Bold = true;
        style.Font.FontSize = points;
    }

    private static void Left(IXLStyle style)
    {
        style.NumberFormat.Format = Priced;
        style.Alignment.Horizontal = XLAlignmentHorizontalValues.Left;
    }

    private static void Under(IXLStyle style, XLColor color)
    {
        style.Border.BottomBorder = XLBorderStyleValues.Thin;
        style.Border.BottomBorderColor = color;
    }
}
