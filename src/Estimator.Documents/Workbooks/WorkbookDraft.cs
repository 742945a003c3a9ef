using ClosedXML.Excel;

namespace Estimator.Documents.Workbooks;

/// <summary>A workbook while its sheets are written.</summary>
internal sealed class WorkbookDraft : IDisposable
{
    // A package needs a date and a document has none of its own: the same input makes the same bytes.
    private static readonly DateTime Always = new(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    private readonly XLWorkbook _book = new();
    private readonly List<SheetPage> _pages = [];

    internal WorkbookDraft(string title, string jobName, string author)
    {
        JobName = jobName;
        _book.Style.Font.FontName = SheetStyles.FontName;
        _book.Style.Font.FontSize = SheetStyles.FontSize;
        _book.Properties.Title = CellText.Of($"{title}: {jobName}");
        _book.Properties.Author = CellText.Of(author);
        _book.Properties.Created = Always;
        _book.Properties.Modified = Always;
    }

    internal string JobName { get; }

    internal SheetStyles Styles { get; } = new();

    internal SheetPage Add(string name)
    {
        var page = new SheetPage(this, _book.AddWorksheet(name));
        _pages.Add(page);
        return page;
    }

    internal byte[] ToBytes()
    {
        using var stream = new MemoryStream();
        _book.SaveAs(stream);
        return PackageFinishing.Finish(stream, [.. _pages.Select(p => p.Shown)]);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Styles.Dispose();
        _book.Dispose();
    }
}
