using System.Globalization;
using Estimator.Documents.House;
using Estimator.Documents.Papers;
using Estimator.Documents.Permit;
using Estimator.Engine.House;
using Estimator.Engine.Panels;

namespace Estimator.Documents.Crew;

/// <summary>The directory of a panel, to be cut out and put inside its door: every space named, spares too.</summary>
/// <remarks>Seven inches wide, a quarter of an inch a row. Source: NEC 408.4(A); sizes: common practice, no source.</remarks>
internal sealed class DoorCard(PanelSchedule schedule, Panel panel, PaperPen pen)
{
    private const double Width = 7 * 72;
    private const double Row = 18;
    private const double Head = 40;
    private const double Foot = 22;
    private const double Corner = 10;
    private const double Number = 22;
    private const double Rating = 28;

    private static readonly PaperLook Name = new(8, false, PaperLook.Dark);
    private static readonly PaperLook Long = new(6.5, false, PaperLook.Dark);

    internal double Height => Head + (schedule.Spaces + 1) / 2 * Row + Foot + 2 * Corner;

    internal void Draw(PaperPage page, double left, double top, string issue)
    {
        Corners(page, left, top);
        var (x, y) = (left, top + Corner);
        page.Text(x + 8, y + 6, pen.OneLine(PlaceWords.Titled(panel), PaperLook.Company, Width - 160), PaperLook.Company);
        page.TextEnding(x + Width - 8, y + 8, string.Create(CultureInfo.InvariantCulture, $"{panel.RatingA.ToAmperes():0} A, {(panel.FedFrom is { } from ? $"fed from {from}" : "service")}"), PaperLook.Soft);
        page.Text(x + 8, y + 23, pen.OneLine(issue, PaperLook.Small, Width - 16), PaperLook.Small);
        y += Head;
        var spaces = PanelSpace.Of(schedule).ToList();
        for (var i = 0; i < spaces.Count; i++)
        {
            Space(page, spaces[i], i % 2 == 0 ? x : x + Width / 2, y + i / 2 * Row);
        }

        var bottom = y + (spaces.Count + 1) / 2 * Row;
        page.Plumb(x + Width / 2, y, bottom, PaperLook.Dark);
        page.Rule(x, x + Width, y, PaperLook.Dark, 1);
        page.Rule(x, x + Width, bottom, PaperLook.Dark, 1);
        page.Text(x + 8, bottom + 6, "Write down every later change. Turn the breaker off and prove it dead before work.", PaperLook.Small);
    }

    private void Space(PaperPage page, PanelSpace space, double x, double y)
    {
        var line = y + (Row - Name.Line) / 2;
        page.TextEnding(x + Number, line, space.Number.ToString(CultureInfo.InvariantCulture), PaperLook.CellStrong with { Points = 8 });
        page.TextEnding(x + Number + Rating, line, string.Join("+", space.Breakers.Select(b => b.Breaker.BreakerA.ToString("0", CultureInfo.InvariantCulture))), Name);
        Named(page, space, x + Number + Rating + 8, y);
        page.Rule(x, x + Width / 2, y + Row, PaperLook.Hairline);
    }

    // A long name takes two lines of a smaller size.
    private void Named(PaperPage page, PanelSpace space, double x, double y)
    {
        var room = Width / 2 - Number - Rating - 12;
        if (space.Breakers.Count == 0)
        {
            page.Text(x, y + (Row - Name.Line) / 2, "spare", Name with { Ink = PaperLook.SoftInk });
            return;
        }

        var look = pen.Width(space.Name, Name) <= room ? Name : Long;
        var lines = pen.Wrap(space.Name, look, room);
        var top = y + (Row - look.Line * Math.Min(2, lines.Count)) / 2;
        page.Text(x, top, lines[0], look);
        if (lines.Count > 1)
        {
            page.Text(x, top + look.Line, pen.OneLine(string.Join(' ', lines.Skip(1)), look, room), look);
        }
    }

    // Where to cut.
    private void Corners(PaperPage page, double left, double top)
    {
        var (right, bottom) = (left + Width, top + Height - Corner);
        foreach (var y in (double[])[top + Corner, bottom])
        {
            page.Rule(left - Corner, left - 2, y, PaperLook.SoftInk);
            page.Rule(right + 2, right + Corner, y, PaperLook.SoftInk);
        }

        foreach (var x in (double[])[left, right])
        {
            page.Plumb(x, top, top + Corner - 2, PaperLook.SoftInk);
            page.Plumb(x, bottom + 2, bottom + Corner, PaperLook.SoftInk);
        }
    }
}
