using System.Globalization;
using Estimator.Documents.House;
using Estimator.Documents.Papers;
using Estimator.Engine;
using Estimator.Engine.House;
using Estimator.Engine.Panels;

namespace Estimator.Documents.Permit;

/// <summary>The sections of the permit's paper on panels: every panel space by space, and what its legs bear.</summary>
internal sealed class PanelSections(Paper paper, JobEstimate estimate)
{
    internal static string Words(Panel panel) => string.Create(
        CultureInfo.InvariantCulture,
        $"{panel.Called()}, {panel.RatingA.ToAmperes():0} A, {panel.Spaces} spaces{(panel.Existing ? ", there already" : ", new")}{(panel.Make is { Length: > 0 } make ? $", {make} {panel.Series}" : "")}");

    internal void Panels()
    {
        foreach (var schedule in estimate.Schedules.Panels)
        {
            Panel(schedule);
        }
    }

    private void Panel(PanelSchedule schedule)
    {
        var panel = estimate.House.Job.Panels.First(p => p.Id == schedule.PanelId);
        paper.SectionOnNewPage(PlaceWords.Titled(panel));
        paper.Say(Words(panel), PaperLook.Soft);
        var table = new PaperTable(
            new("Circuit", 4), PaperColumn.Figures("A", 0.8), PaperColumn.Figures("VA", 1.1), PaperColumn.Figures("", 0.7), new("", 0.7), PaperColumn.Figures("VA", 1.1), PaperColumn.Figures("A", 0.8), new("Circuit", 4));
        var spaces = PanelSpace.Of(schedule).ToList();
        foreach (var pair in spaces.Chunk(2))
        {
            var (left, right) = (Side(pair[0]), pair.Length > 1 ? Side(pair[1]) : ["", "", "", ""]);
            table.Row(left[0], left[1], left[2], left[3], right[3], right[2], right[1], right[0]);
        }

        paper.Table(table);
        Legs(schedule, spaces);
        foreach (var breaker in schedule.Unplaced)
        {
            paper.Say($"No space was found for {breaker.Name}.", PaperLook.Warning);
        }

        foreach (var note in schedule.Notes)
        {
            paper.Say(note, PaperLook.Soft);
        }
    }

    private void Legs(PanelSchedule schedule, List<PanelSpace> spaces)
    {
        var table = new PaperTable(new("Legs", 5), PaperColumn.Figures("Load, VA", 1));
        table.Row("Leg A", PaperFigures.Plain(schedule.LegAVa.Value));
        table.Row("Leg B", PaperFigures.Plain(schedule.LegBVa.Value));
        table.Total("Both legs", PaperFigures.Plain(spaces.Sum(s => s.LoadVa)));
        paper.Table(table);
        paper.Say($"The legs are {PaperFigures.Plain(schedule.ImbalanceVa.Value)} VA apart. What was stated with no load counts nothing. NEC 408.4(A), 210.11(B).", PaperLook.Soft);
    }

    private static string[] Side(PanelSpace space) => space.Breakers.Count == 0
        ? ["spare", "", "", space.Number.ToString(CultureInfo.InvariantCulture)]
        : [space.Name, string.Join("+", space.Breakers.Select(b => PaperFigures.Whole(b.Breaker.BreakerA))), PaperFigures.Plain(space.LoadVa), space.Number.ToString(CultureInfo.InvariantCulture)];
}
