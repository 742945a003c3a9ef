using System.Globalization;
using Estimator.Documents.Workbooks;
using Estimator.Engine;
using Estimator.Engine.House;
using Estimator.Engine.Panels;

namespace Estimator.Documents.Permit;

/// <summary>Every panel space by space; a changed load changes the legs.</summary>
internal sealed class PanelSheet(SheetPage page, JobEstimate estimate)
{
    internal const string Name = "Panels";
    private const int HeadRow = 4;
    private const int Last = 6;

    private int _row = HeadRow + 1;

    internal void Write()
    {
        page.Columns(20, 9, 8, 12, 60, 14);
        page.Put(1, 1, $"Panel schedules: {estimate.House.Job.Name}", page.Styles.Title);
        page.Put(2, 1, "Each pole of a two-pole breaker bears half of its load. What was stated with no load counts nothing. NEC 408.4(A), 210.11(B).", page.Styles.Subtitle);
        page.Heads(HeadRow, "Panel", ">Space", "  Leg", ">Breaker, A", "  Circuit", ">Load, VA");
        foreach (var schedule in estimate.Schedules.Panels)
        {
            Panel(schedule, estimate.House.Job.Panels.First(p => p.Id == schedule.PanelId).Called());
        }

        page.Put(_row, 1, Cautions.PlanningAid, page.Styles.Subtitle);
        page.Print(landscape: false, headingRows: HeadRow, repeatFrom: HeadRow);
    }

    private void Panel(PanelSchedule schedule, string name)
    {
        var first = _row;
        foreach (var space in PanelSpace.Of(schedule))
        {
            page.Put(_row, 1, name, page.Styles.Text);
            page.Put(_row, 2, space.Number, page.Styles.Number(SheetStyles.Whole));
            page.Put(_row, 3, space.Leg.ToString(), page.Styles.Soft);
            page.Put(_row, 4, string.Join('+', space.Breakers.Select(b => b.Breaker.BreakerA.ToString("0", CultureInfo.InvariantCulture))), page.Styles.Number("@"));
            page.Put(_row, 5, space.Breakers.Count == 0 ? "spare" : space.Name, page.Styles.Soft);
            page.Input(_row++, 6, space.Breakers.Count == 0 ? null : space.LoadVa, SheetStyles.Plain);
        }

        var last = _row - 1;
        page.Limit(first, last, Last);
        var begin = _row;
        Leg("A", schedule.LegAVa.Value, first, last);
        Leg("B", schedule.LegBVa.Value, first, last);
        page.Fill(_row, 1, Last, page.Styles.TotalText);
        page.Put(_row, 1, $"{name}: both legs", page.Styles.TotalText);
        page.Live(_row, Last, string.Create(CultureInfo.InvariantCulture, $"SUM(F{begin}:F{_row - 1})"), schedule.LegAVa.Value + schedule.LegBVa.Value, page.Styles.Number(SheetStyles.Plain, SheetStyles.Tone.Total));
        _row += 2;
        foreach (var breaker in schedule.Unplaced)
        {
            page.Put(_row++, 1, $"No space was found for {breaker.Name}.", page.Styles.Warning);
        }
    }

    private void Leg(string leg, decimal va, int first, int last)
    {
        page.Fill(_row, 1, Last, page.Styles.TotalText);
        page.Put(_row, 1, $"Leg {leg}", page.Styles.TotalText);
        page.Live(_row, Last, string.Create(CultureInfo.InvariantCulture, $"SUMIF(C{first}:C{last},\"{leg}\",F{first}:F{last})"), va, page.Styles.Number(SheetStyles.Plain, SheetStyles.Tone.Total));
        _row++;
    }
}
