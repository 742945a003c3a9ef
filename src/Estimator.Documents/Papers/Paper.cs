using PdfSharp.Pdf;

namespace Estimator.Documents.Papers;

/// <summary>A PDF while it is written, from the top of its first page down; a new page begins where something does not fit.</summary>
/// <remarks>
/// To write one: make it with a <see cref="PaperTitle"/>, then <see cref="Section"/>, <see cref="Say"/>, <see cref="Line"/>, <see cref="List"/>,
/// <see cref="Table"/>, <see cref="Sign"/> and <see cref="Draw"/> in the order of reading, and take <see cref="ToBytes"/>. Each section becomes a bookmark.
/// Title block, cautions, running heads and page numbers come by themselves. Letter size, text as text in embedded fonts; the same calls give the same bytes.
/// </remarks>
internal sealed class Paper : IDisposable
{
    /// <summary>Where the text begins at the left.</summary>
    internal const double LeftEdge = TitleBlock.Margin;

    private const double LabelWidth = 108;
    private const double SectionGap = 12;
    private const double TitleWidth = 600;

    private readonly PdfDocument _document = new();
    private readonly List<PaperPage> _pages = [];
    private readonly TitleBlock _block;
    private readonly DateOnly? _issued;
    private double _bottom;
    private double _top;
    private string _section = "";

    internal Paper(PaperTitle title)
    {
        PaperFonts.Use();
        _block = new TitleBlock(title, Pen);
        _issued = title.Letterhead.IssuedOn;
        _document.Info.Title = Pen.OneLine($"{title.Kind}: {title.Job}", PaperLook.Body, TitleWidth);
        _document.Info.Author = title.Letterhead.Company;
        _document.Info.Creator = "Residential wiring estimator";
        _document.Language = "en-US";
        _document.PageMode = PdfPageMode.UseOutlines;
        Turn(title.Landscape);
    }

    internal PaperPen Pen { get; } = new();

    internal PaperPage Page => _pages[^1];

    /// <summary>Where the next thing is set.</summary>
    internal double Y { get; set; }

    /// <summary>Width of the text.</summary>
    internal double Width => Page.Width - 2 * TitleBlock.Margin;

    /// <summary>Height that is left on the page.</summary>
    internal double Left => _bottom - Y;

    /// <summary>Whether nothing stands on the page yet.</summary>
    internal bool IsFresh => Y == _top;

    /// <summary>Begins a section with a bookmark; its head stays with what follows.</summary>
    internal void Section(string title) => _section = title;

    /// <summary>Begins a section on a page of its own.</summary>
    internal void SectionOnNewPage(string title, bool landscape = false)
    {
        Turn(landscape);
        Section(title);
    }

    /// <summary>A paragraph.</summary>
    internal void Say(string text, PaperLook? look = null) => Lines(text, look ?? PaperLook.Body, 0, 3);

    /// <summary>Paragraphs with a dash in front.</summary>
    internal void List(IEnumerable<string> sentences)
    {
        foreach (var sentence in sentences)
        {
            var (page, y) = Lines(sentence, PaperLook.Body, 12, 3);
            page.Text(LeftEdge, y, "–", PaperLook.Body);
        }
    }

    /// <summary>A label and what it says; without words a line to write on.</summary>
    internal void Line(string label, string text, PaperLook? look = null)
    {
        if (text.Length == 0)
        {
            text = " ";
        }

        var (page, y) = Lines(text, look ?? PaperLook.Body, LabelWidth, 3);
        page.Text(LeftEdge, y + (look ?? PaperLook.Body).Ascent - PaperLook.Soft.Ascent, Pen.OneLine(label, PaperLook.Soft, LabelWidth - 6), PaperLook.Soft);
        if (text == " ")
        {
            page.Rule(LeftEdge + LabelWidth, LeftEdge + Width, y + PaperLook.Body.Line, PaperLook.SoftInk);
        }
    }

    /// <summary>A table; heads are repeated, totals never stand alone.</summary>
    internal void Table(PaperTable table)
    {
        new TableSetting(this, table).Write();
        Y += 4;
    }

    /// <summary>Lines to sign on, side by side: who signs, and the day.</summary>
    internal void Sign(params string[] who)
    {
        const double Height = 46;
        Need(Height);
        var width = (Width - 24 * (who.Length - 1)) / who.Length;
        for (var i = 0; i < who.Length; i++)
        {
            var x = LeftEdge + i * (width + 24);
            Page.Rule(x, x + width, Y + 30, PaperLook.Dark);
            Page.Text(x, Y + 32, $"{who[i]}: name, signature", PaperLook.Small);
            Page.TextEnding(x + width, Y + 32, "date", PaperLook.Small);
        }

        Y += Height;
    }

    /// <summary>A drawing of a height; it gets the page and where its top is.</summary>
    internal void Draw(double height, Action<PaperPage, double> draw)
    {
        Need(height);
        draw(Page, Y);
        Y += height;
    }

    /// <summary>Sees to it that so much height is left, on a new page where need be, and sets the head of a section that waits.</summary>
    internal void Need(double height)
    {
        var section = _section.Length > 0 ? SectionGap + PaperLook.Section.Line + 5 : 0;
        if (Left < section + height && !IsFresh)
        {
            Turn(Page.Width > Page.Height);
        }

        if (section > 0)
        {
            Head(_section);
            _section = "";
        }
    }

    /// <summary>The finished file.</summary>
    internal byte[] ToBytes()
    {
        Need(0);
        for (var i = 0; i < _pages.Count; i++)
        {
            _block.Foot(_pages[i], i + 1, _pages.Count);
            _pages[i].Dispose();
        }

        return SameBytes.Save(_document, _issued);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _pages.ForEach(p => p.Dispose());
        _document.Dispose();
    }

    private void Turn(bool landscape)
    {
        _pages.Add(new PaperPage(_document, Pen, landscape));
        Y = _pages.Count == 1 ? _block.First(Page) : _block.Later(Page);
        _bottom = _block.Bottom(Page, _pages.Count == 1);
        _top = Y;
    }

    private void Head(string title)
    {
        Y += IsFresh ? 4 : SectionGap;
        var bookmark = _document.Outlines.Add(title, Page.Page, opened: true);
        (bookmark.PageDestinationType, bookmark.Left, bookmark.Top) = (PdfPageDestinationType.Xyz, 0, Page.Height - Y);
        Page.Text(LeftEdge, Y, Pen.OneLine(title, PaperLook.Section, Width), PaperLook.Section);
        Y += PaperLook.Section.Line + 1;
        Page.Rule(LeftEdge, LeftEdge + Width, Y, PaperLook.Dark);
        Y += 4;
    }

    // Where the first line stands; the rest may go over to a further page.
    private (PaperPage Page, double Y) Lines(string text, PaperLook look, double indent, double after)
    {
        var lines = Pen.Wrap(text, look, Width - indent);
        Need(look.Line * Math.Min(2, lines.Count));
        var first = (Page, Y);
        foreach (var line in lines)
        {
            Need(look.Line);
            Page.Text(LeftEdge + indent, Y, line, look);
            Y += look.Line;
        }

        Y += after;
        return first;
    }
}
