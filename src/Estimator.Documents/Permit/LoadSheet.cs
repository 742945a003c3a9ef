using Estimator.Documents.Explanations;
using Estimator.Documents.House;
using Estimator.Documents.Loads;
using Estimator.Documents.Workbooks;
using Estimator.Engine;
using Estimator.Engine.Explanations;
using Estimator.Engine.Loads;

namespace Estimator.Documents.Permit;

/// <summary>Floor areas and nameplates that may be changed, and each load worksheet following them line by line, as far as its rules are arithmetic.</summary>
internal sealed class LoadSheet(SheetPage page, JobEstimate estimate, LiveFormula formulas, ExplanationIndex index)
{
    internal const string Name = "Loads";
    private const int Last = 5;

    private int _row = 1;

    /// <summary>The figures that the last sheet explains.</summary>
    internal static IEnumerable<NodeRef> Figures(JobEstimate estimate) => Sheets(estimate).SelectMany(s => LoadWords.Shown(s.Sheet)).Select(l => l.Value.Node)
        .Concat(Areas(estimate).Select(a => a.Area.Node)).Concat(estimate.Layout.Equipment.Select(e => e.LoadVa.Node));

    internal void Write()
    {
        page.Columns(56, 26, 14, 5, 9);
        page.Put(_row++, 1, $"Load calculation: {estimate.House.Job.Name}", page.Styles.Title);
        page.Put(_row++, 1, $"NEC {(int)estimate.House.Job.Code.Edition}. Copper figures may be changed and the lines follow where their rule is arithmetic; which rule applies, and which motor is the largest, stay as calculated.", page.Styles.Subtitle);
        Inputs();
        foreach (var (title, sheet) in Sheets(estimate))
        {
            Worksheet(title, sheet);
        }

        _row++;
        foreach (var caution in Cautions.Safety)
        {
            page.Across(_row++, 1, Last, caution, page.Styles.Note);
        }

        page.Print(landscape: false, headingRows: 0, repeatFrom: 0);
    }

    private static IEnumerable<(string Title, LoadWorksheet Sheet)> Sheets(JobEstimate estimate) => estimate.Loads.Sheets.Select(s => (LoadWords.Of(s), s))
        .Concat(estimate.Loads.Feeders.Select(f => ($"Feeder of {PlaceWords.Panel(estimate, f.PanelId)}", f.Sheet)));

    private void Inputs()
    {
        Section("Floor areas that count", "", "sq ft");
        var first = _row;
        foreach (var (room, area) in Areas(estimate))
        {
            Input(room, "", area, SheetStyles.Tenths, "");
        }

        page.Limit(first, Math.Max(first, _row - 1), 3);
        if (estimate.Layout.Equipment.IsEmpty)
        {
            return;
        }

        Section("Equipment", "", "VA");
        first = _row;
        for (var i = 0; i < estimate.Layout.Equipment.Length; i++)
        {
            var laid = estimate.Layout.Equipment[i];
            Input(PlaceWords.Equipment(estimate, i), FormattableString.Invariant($"{PlaceWords.Room(estimate.House.Rooms[laid.Place.Room])}, {laid.Volts.Value:0} V"), laid.LoadVa, SheetStyles.Plain, "");
        }

        page.Limit(first, _row - 1, 3);
    }

    // Rooms that some calculation adds up, in the order in which it does.
    private static List<(string Room, Fact Area)> Areas(JobEstimate estimate)
    {
        var loads = estimate.Loads.Page;
        var counted = Enumerable.Range(0, loads.Count).Select(i => loads[i]).Where(n => n.Operation is Operation.Sum && n.Rule == "counted-area").SelectMany(n => n.Inputs).ToHashSet();
        return [.. estimate.House.Rooms.Where(r => counted.Contains(r.AreaSquareFeet.Node)).Select(r => (PlaceWords.Room(r), r.AreaSquareFeet))];
    }

    private void Worksheet(string title, LoadWorksheet sheet)
    {
        Section($"{title}, {sheet.Article}", "Article", "Figure");
        foreach (var line in LoadWords.Shown(sheet))
        {
            var total = LoadWords.IsTotal(line);
            page.Put(_row, 1, line.Label, total ? page.Styles.TotalText : page.Styles.Text);
            page.Put(_row, 2, $"{line.Article}{(line.Verified ? "" : ", not verified")}", total ? page.Styles.TotalSoft : page.Styles.Soft);
            page.Live(_row, 3, formulas.Of(line.Value.Node, Name), line.Value.Value, page.Styles.Number("#,##0.####", total ? SheetStyles.Tone.Total : SheetStyles.Tone.Row));
            page.Put(_row, 4, FigureText.UnitWords(line.Value.Unit), total ? page.Styles.TotalSoft : page.Styles.Soft);
            page.Explained(_row, 5, index[line.Value.Node], total);
            formulas.Holds(line.Value.Node, page.At(_row++, 3));
        }

        foreach (var note in sheet.Notes)
        {
            page.Across(_row++, 1, Last, note, page.Styles.Note);
        }
    }

    private void Input(string label, string note, Fact figure, string format, string unit)
    {
        page.Put(_row, 1, label, page.Styles.Text);
        page.Put(_row, 2, note, page.Styles.Soft);
        page.Input(_row, 3, figure.Value, format);
        page.Put(_row, 4, unit, page.Styles.Soft);
        page.Explained(_row, 5, index[figure.Node]);
        formulas.Holds(figure.Node, page.At(_row++, 3));
    }

    private void Section(string title, string second, string third)
    {
        _row++;
        page.Put(_row, 1, title, page.Styles.Section);
        page.Put(_row, 2, second, page.Styles.Head);
        page.Put(_row, 3, third, page.Styles.HeadRight);
        page.Put(_row, 4, "", page.Styles.Head);
        page.Put(_row++, 5, "Explained in row", page.Styles.HeadRight);
    }
}
