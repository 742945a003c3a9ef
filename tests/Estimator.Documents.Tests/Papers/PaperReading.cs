using System.Text;
using System.Text.RegularExpressions;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Outline;

namespace Estimator.Documents.Tests.Papers;

/// <summary>Reads a PDF back with a library that had no part in writing it.</summary>
internal sealed partial class PaperReading
{
    private const double SameLine = 2.5;

    internal PaperReading(byte[] pdf)
    {
        Raw = Encoding.Latin1.GetString(pdf);
        using var document = PdfDocument.Open(pdf);
        Pages = [.. document.GetPages().Select(Lines)];
        Title = document.Information.Title ?? "";
        Bookmarks = document.TryGetBookmarks(out var bookmarks) ? [.. bookmarks.GetNodes().OfType<DocumentBookmarkNode>().Select(n => (n.Title, n.PageNumber))] : [];
        FontNames = [.. document.GetPages().SelectMany(p => p.Letters).Select(l => l.FontName ?? "").Distinct(StringComparer.Ordinal)];
    }

    internal string Raw { get; }

    /// <summary>The lines of each page, from its top.</summary>
    internal IReadOnlyList<IReadOnlyList<string>> Pages { get; }

    internal IEnumerable<string> AllLines => Pages.SelectMany(p => p);

    /// <summary>Everything in one line, for text that was wrapped.</summary>
    internal string Text => string.Join(' ', AllLines);

    internal string Title { get; }

    internal IReadOnlyList<(string Title, int Page)> Bookmarks { get; }

    internal IReadOnlyList<string> FontNames { get; }

    /// <summary>What every paper of ours must be.</summary>
    internal void IsWellMade()
    {
        Assert.Matches(@"/Lang ?\(", Raw);
        Assert.NotEmpty(Title);
        Assert.NotEmpty(Bookmarks);
        Assert.All(FontNames, n => Assert.Matches("^PAPER[A-Z]\\+Liberation Sans", n));
        Assert.Equal(FontPrograms().Count(Raw), Descriptors().Count(Raw));
        Assert.DoesNotContain("/Subtype/Image", Raw, StringComparison.Ordinal);
        for (var i = 0; i < Pages.Count; i++)
        {
            Assert.EndsWith($"Page {i + 1} of {Pages.Count}", Pages[i][^1], StringComparison.Ordinal);
        }

        Assert.All(Documents.Cautions.Safety, c => Assert.Contains(c, string.Join(' ', Pages[0]), StringComparison.Ordinal));
    }

    private static List<string> Lines(Page page)
    {
        var lines = new List<List<Word>>();
        foreach (var word in page.GetWords().OrderByDescending(w => w.BoundingBox.Bottom))
        {
            var baseline = word.Letters[0].StartBaseLine.Y;
            var line = lines.FindLast(l => Math.Abs(l[0].Letters[0].StartBaseLine.Y - baseline) < SameLine);
            if (line is null)
            {
                lines.Add([word]);
            }
            else
            {
                line.Add(word);
            }
        }

        return [.. lines.OrderByDescending(l => l[0].Letters[0].StartBaseLine.Y).Select(l => string.Join(' ', l.OrderBy(w => w.BoundingBox.Left).Select(w => w.Text)))];
    }

    [GeneratedRegex("/FontFile2 ", RegexOptions.None, 10_000)]
    private static partial Regex FontPrograms();

    [GeneratedRegex("/Type ?/FontDescriptor", RegexOptions.None, 10_000)]
    private static partial Regex Descriptors();
}
