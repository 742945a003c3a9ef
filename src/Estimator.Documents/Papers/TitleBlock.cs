using System.Globalization;

namespace Estimator.Documents.Papers;

/// <summary>Head and foot of every page: who, what, for which job, of when, and which page of how many.</summary>
internal sealed class TitleBlock(PaperTitle title, PaperPen pen)
{
    internal const double Margin = 46;
    private const double FootHeight = 26;
    private const double Gap = 6;
    private const int MostLines = 2;

    private string Day => title.Letterhead.IssuedOn?.ToString("MMMM d, yyyy", CultureInfo.InvariantCulture) ?? "";

    private string Issue => string.Join("  ·  ", new[] { title.Letterhead.Revision.Length > 0 ? $"Revision {title.Letterhead.Revision}" : "", Day }.Where(t => t.Length > 0));

    /// <summary>Where the text of a page must end.</summary>
    internal double Bottom(PaperPage page, bool first) =>
        page.Height - Margin - FootHeight - (first ? Cautions(page).Sum(line => line.Count) * PaperLook.Small.Line + (title.Cautions.IsEmpty ? 0 : 2 * Gap) : 0);

    /// <summary>Draws the head of the first page; where its text begins.</summary>
    internal double First(PaperPage page)
    {
        var (right, y) = (page.Width - Margin, Margin);
        var letterhead = title.Letterhead;
        if (letterhead.Company.Length > 0)
        {
            y = Say(page, y, letterhead.Company, PaperLook.Company);
            y = letterhead.CompanyLines.IsEmpty ? y : Say(page, y + 2, string.Join("  ·  ", letterhead.CompanyLines), PaperLook.Soft);
        }
        else
        {
            page.Text(Margin, y, "From", PaperLook.Small);
            page.Rule(Margin + 28, right, y + PaperLook.Small.Line, PaperLook.SoftInk);
            y += PaperLook.Small.Line;
        }

        page.Rule(Margin, right, y + Gap, PaperLook.Dark, 1);
        y += 2.5 * Gap;
        page.TextEnding(right, y + PaperLook.Title.Ascent - PaperLook.Soft.Ascent, pen.OneLine(Issue, PaperLook.Soft, (right - Margin) / 3), PaperLook.Soft);
        y = Say(page, y, title.Kind, PaperLook.Title);
        y = Say(page, y, title.Job, PaperLook.Company);
        y = letterhead.Customer.Length > 0 ? Say(page, y + 2, $"For {letterhead.Customer}", PaperLook.Soft) : y;
        y = letterhead.Site.Length > 0 ? Say(page, y + 2, $"At {letterhead.Site}", PaperLook.Soft) : y;
        Warn(page);
        return y + Gap;
    }

    /// <summary>Draws the head of a later page; where its text begins.</summary>
    internal double Later(PaperPage page)
    {
        var right = page.Width - Margin;
        var issue = pen.OneLine(Issue, PaperLook.Small, (right - Margin) / 3);
        var room = right - Margin - pen.Width(issue, PaperLook.Small) - 20;
        page.Text(Margin, Margin - 14, pen.OneLine($"{title.Kind}: {title.Job}", PaperLook.Small, room), PaperLook.Small);
        page.TextEnding(right, Margin - 14, issue, PaperLook.Small);
        page.Rule(Margin, right, Margin, PaperLook.Hairline);
        return Margin + Gap;
    }

    /// <summary>Draws the foot, once it is known how many pages there are.</summary>
    internal void Foot(PaperPage page, int number, int of)
    {
        var (right, y) = (page.Width - Margin, page.Height - Margin - 10);
        page.Rule(Margin, right, y - 4, PaperLook.Hairline);
        page.Text(Margin, y, number == 1 || title.Cautions.IsEmpty ? "Planning aid." : "Planning aid; see the cautions on page 1.", PaperLook.Small);
        page.TextEnding(right, y, string.Create(CultureInfo.InvariantCulture, $"Page {number} of {of}"), PaperLook.Small);
    }

    private void Warn(PaperPage page)
    {
        var y = Bottom(page, first: true) + Gap;
        foreach (var line in Cautions(page).SelectMany(c => c))
        {
            page.Text(Margin, y, line, PaperLook.Small);
            y += PaperLook.Small.Line;
        }
    }

    private List<List<string>> Cautions(PaperPage page) => [.. title.Cautions.Select(c => pen.Wrap(c, PaperLook.Small, page.Width - 2 * Margin))];

    private double Say(PaperPage page, double y, string text, PaperLook look)
    {
        foreach (var line in pen.Wrap(text, look, page.Width - 2 * Margin, MostLines))
        {
            page.Text(Margin, y, line, look);
            y += look.Line;
        }

        return y;
    }
}
