using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Estimator.Documents.Papers;

/// <summary>One page while it is drawn. Points from its upper left corner.</summary>
internal sealed class PaperPage : IDisposable
{
    private const double Short = 612;
    private const double Long = 792;
    private const double Thin = 0.6;

    private readonly XGraphics _graphics;
    private readonly PaperPen _pen;

    internal PaperPage(PdfDocument document, PaperPen pen, bool landscape)
    {
        Page = document.AddPage();
        (Page.Width, Page.Height) = landscape ? (XUnit.FromPoint(Long), XUnit.FromPoint(Short)) : (XUnit.FromPoint(Short), XUnit.FromPoint(Long));
        (Width, Height) = landscape ? (Long, Short) : (Short, Long);
        _graphics = XGraphics.FromPdfPage(Page);
        _pen = pen;
    }

    internal PdfPage Page { get; }

    internal double Width { get; }

    internal double Height { get; }

    /// <summary>A line of text whose upper left corner is here.</summary>
    internal void Text(double x, double top, string text, PaperLook look)
    {
        if (text.Length > 0)
        {
            _graphics.DrawString(text, _pen.Font(look), new XSolidBrush(look.Ink), x, top + look.Ascent, XStringFormats.BaseLineLeft);
        }
    }

    /// <summary>A line of text that ends here.</summary>
    internal void TextEnding(double right, double top, string text, PaperLook look) => Text(right - _pen.Width(text, look), top, text, look);

    /// <summary>A level line.</summary>
    internal void Rule(double left, double right, double y, XColor ink, double thick = Thin) => _graphics.DrawLine(new XPen(ink, thick), left, y, right, y);

    /// <summary>A plumb line.</summary>
    internal void Plumb(double x, double top, double bottom, XColor ink, double thick = Thin) => _graphics.DrawLine(new XPen(ink, thick), x, top, x, bottom);

    /// <summary>A filled band.</summary>
    internal void Band(double left, double top, double width, double height, XColor fill) => _graphics.DrawRectangle(new XSolidBrush(fill), left, top, width, height);

    /// <summary>An empty frame.</summary>
    internal void Frame(double left, double top, double width, double height, XColor ink, double thick = Thin) => _graphics.DrawRectangle(new XPen(ink, thick), left, top, width, height);

    /// <summary>A disc round a point, in one ink with an edge of another.</summary>
    internal void Disc(double x, double y, double radius, XColor fill, XColor edge) =>
        _graphics.DrawEllipse(new XPen(edge, Thin), new XSolidBrush(fill), x - radius, y - radius, 2 * radius, 2 * radius);

    /// <summary>A wire that leaves and arrives level.</summary>
    internal void Wire(double x1, double y1, double x2, double y2, XColor ink, double thick)
    {
        var bend = (x2 - x1) / 3;
        _graphics.DrawBezier(new XPen(ink, thick), x1, y1, x1 + bend, y1, x2 - bend, y2, x2, y2);
    }

    /// <inheritdoc/>
    public void Dispose() => _graphics.Dispose();
}
