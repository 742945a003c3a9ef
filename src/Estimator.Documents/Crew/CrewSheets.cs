using System.Globalization;
using Estimator.Documents.Workbooks;
using Estimator.Engine;

namespace Estimator.Documents.Crew;

/// <summary>The sheets of a crew: what to pull, what to set where, which boxes, what to bring, what to test.</summary>
internal sealed class CrewSheets(WorkbookDraft draft, JobEstimate estimate)
{
    internal const string PullName = "Pull list";
    private const int HeadRow = 4;
    private const string Tick = "☐";

    private readonly CrewLabels _labels = new(estimate);

    internal void PullList()
    {
        var page = Begin(PullName, "Each run is one piece; make-up, slack and tolerance are in the length. If the way on site differs, measure first.", 5, 9, 32, 32, 10, 12, 9, 14, 26);
        page.Heads(HeadRow, "Done", "Circuit", "From", "To", "Cable", ">Length, ft in", ">Length, ft", "  Carries", "  Way");
        var runs = PulledRun.Of(estimate, _labels).ToList();
        var row = HeadRow + 1;
        foreach (var run in runs)
        {
            page.Put(row, 1, Tick, page.Styles.Soft);
            page.Put(row, 2, run.Circuit, page.Styles.Text);
            page.Put(row, 3, run.From, page.Styles.Text);
            page.Put(row, 4, run.To, page.Styles.Text);
            page.Put(row, 5, run.Cable, page.Styles.Text);
            page.Put(row, 6, run.Length.ToString(), page.Styles.Number("@"));
            page.Input(row, 7, run.Length.ToFeet(), SheetStyles.UnitDollars);
            page.Put(row, 8, run.Carries, page.Styles.Soft);
            page.Put(row++, 9, run.Way, page.Styles.Soft);
        }

        Sums(page, runs, row);
        page.Print(landscape: true, headingRows: HeadRow, repeatFrom: HeadRow);
    }

    // A length measured on site may be typed over, and the sums follow.
    private static void Sums(SheetPage page, List<PulledRun> runs, int row)
    {
        var (first, last) = (HeadRow + 1, row - 1);
        page.Limit(first, Math.Max(first, last), 7);
        row++;
        page.Put(row, 3, "Cable by kind, ft", page.Styles.Section);
        page.Fill(row++, 4, 7, page.Styles.Section);
        var begin = row;
        foreach (var cable in runs.GroupBy(r => r.Cable).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            page.Put(row, 3, cable.Key, page.Styles.Text);
            page.Fill(row, 4, 6, page.Styles.Text);
            page.Live(row, 7, string.Create(CultureInfo.InvariantCulture, $"SUMIF(E{first}:E{last},C{row},G{first}:G{last})"), cable.Sum(r => r.Length.ToFeet()), page.Styles.Number(SheetStyles.UnitDollars));
            row++;
        }

        page.Put(row, 3, "All runs", page.Styles.TotalText);
        page.Fill(row, 4, 6, page.Styles.TotalText);
        page.Live(row, 7, runs.Count == 0 ? "0" : string.Create(CultureInfo.InvariantCulture, $"SUM(G{begin}:G{row - 1})"), runs.Sum(r => r.Length.ToFeet()), page.Styles.Number(SheetStyles.UnitDollars, SheetStyles.Tone.Total));
        page.CallIt("PulledFeet", row, 7);
    }

    internal void Devices()
    {
        var page = Begin("Devices", "Room by room. Heights are to the centre of the box.", 5, 20, 30, 10, 9, 9, 28, 24);
        page.Heads(HeadRow, "Set", "Room", "Device", ">Height", "  Box", "Circuit", "Note", "  Id");
        var row = HeadRow + 1;
        foreach (var device in SetDevice.Of(estimate, _labels))
        {
            page.Put(row, 1, Tick, page.Styles.Soft);
            page.Put(row, 2, device.Room, page.Styles.Text);
            page.Put(row, 3, device.Name, page.Styles.Text);
            page.Put(row, 4, device.Height, page.Styles.Number("@"));
            page.Put(row, 5, device.Box, page.Styles.Soft);
            page.Put(row, 6, device.Circuit, page.Styles.Text);
            page.Put(row, 7, device.Note, page.Styles.Soft);
            page.Put(row++, 8, device.Id, page.Styles.Soft);
        }

        page.Print(landscape: true, headingRows: HeadRow, repeatFrom: HeadRow);
    }

    internal void Boxes()
    {
        var page = Begin("Boxes", "Circuit by circuit along the chain. A box card in the crew's PDF shows how each is made up.", 5, 9, 36, 38, 7, 8, 9, 8, 8, 6);
        page.Heads(HeadRow, "Set", "Box", "Room and what it holds", "The box", ">Gangs", ">Cu in", ">Cu in needed", ">Cables", ">Splices", "  Fits");
        var row = HeadRow + 1;
        foreach (var box in MadeUpBox.Of(estimate, _labels))
        {
            page.Put(row, 1, Tick, page.Styles.Soft);
            page.Put(row, 2, box.Label, page.Styles.Text);
            page.Put(row, 3, box.Serves, page.Styles.Text);
            page.Put(row, 4, box.Item, page.Styles.Text);
            page.Put(row, 5, box.Gangs, page.Styles.Number(SheetStyles.Whole));
            page.Blank(row, 6, page.Styles.Text);
            if (box.VolumeIn3 is { } volume)
            {
                page.Put(row, 6, volume, page.Styles.Number(SheetStyles.Tenths));
            }

            page.Put(row, 7, box.NeededIn3, page.Styles.Number(SheetStyles.Hours));
            page.Put(row, 8, box.Cables, page.Styles.Number(SheetStyles.Whole));
            page.Put(row, 9, box.Splices, page.Styles.Number(SheetStyles.Whole));
            page.Put(row++, 10, box.Fits ? "yes" : "no", box.Fits ? page.Styles.Soft : page.Styles.Warning);
        }

        page.Print(landscape: true, headingRows: HeadRow, repeatFrom: HeadRow);
    }

    internal void Kit()
    {
        var page = Begin("Tools", "What is in this job asks for them. Numbers that are not of the takeoff are starting points.", 7, 12, 9, 6, 50, 28, 30);
        page.Heads(HeadRow, "Packed", "Kind", ">How many", "  Unit", "What", "  Because of", "  Rests on");
        var row = HeadRow + 1;
        foreach (var line in KitLine.Of(estimate))
        {
            page.Put(row, 1, Tick, page.Styles.Soft);
            page.Put(row, 2, line.Consumable ? "consumable" : "tool", page.Styles.Text);
            page.Input(row, 3, line.Count, SheetStyles.Whole);
            page.Put(row, 4, line.Unit == "foot" ? "ft" : line.Unit == "each" ? "ea" : line.Unit, page.Styles.Soft);
            page.Put(row, 5, line.Name, page.Styles.Text);
            page.Put(row, 6, line.Because, page.Styles.Soft);
            page.Put(row++, 7, line.Basis, page.Styles.Soft);
        }

        page.Limit(HeadRow + 1, row - 1, 3);
        page.Print(landscape: true, headingRows: HeadRow, repeatFrom: HeadRow);
    }

    internal void Tests()
    {
        var page = Begin("Tests", Cautions.AtWork, 9, 26, 42, 7, 22, 14, 6, 24);
        page.Heads(HeadRow, "Circuit", "Name", "Test", "Power", "Expected", "Found", "Right", "  Rests on");
        var row = HeadRow + 1;
        foreach (var test in TestLine.Of(estimate, _labels))
        {
            page.Put(row, 1, test.On, page.Styles.Text);
            page.Put(row, 2, test.Name, page.Styles.Text);
            page.Put(row, 3, test.Test, page.Styles.Text);
            page.Put(row, 4, test.Live ? "on" : "off", page.Styles.Text);
            page.Put(row, 5, test.Expected, page.Styles.Text);
            page.Input(row, 6, null, "@");
            page.Put(row, 7, Tick, page.Styles.Soft);
            page.Put(row++, 8, test.Basis, page.Styles.Soft);
        }

        page.Put(row + 1, 1, Cautions.PlanningAid, page.Styles.Subtitle);
        page.Print(landscape: true, headingRows: HeadRow, repeatFrom: HeadRow);
    }

    private SheetPage Begin(string name, string say, params ReadOnlySpan<double> widths)
    {
        var page = draft.Add(name);
        page.Columns(widths);
        page.Put(1, 1, $"{name}: {estimate.House.Job.Name}", page.Styles.Title);
        page.Put(2, 1, say, page.Styles.Subtitle);
        return page;
    }
}
