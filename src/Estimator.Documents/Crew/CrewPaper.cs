using System.Globalization;
using Estimator.Documents.House;
using Estimator.Documents.Papers;
using Estimator.Documents.Purchase;
using Estimator.Engine;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase;

namespace Estimator.Documents.Crew;

/// <summary>What a crew takes along: what to bring, what to pull, how to cut, what to set where, how each box is made up, what to test, and the door card of each panel.</summary>
public sealed class CrewPaper
{
    private const double CardGap = 10;

    private readonly JobEstimate _estimate;
    private readonly Paper _paper;
    private readonly CrewLabels _labels;
    private readonly string _issue;

    private CrewPaper(Paper paper, JobEstimate estimate, Letterhead letterhead)
    {
        (_paper, _estimate, _labels) = (paper, estimate, new CrewLabels(estimate));
        var day = letterhead.IssuedOn?.ToString("MMMM d, yyyy", CultureInfo.InvariantCulture) ?? "";
        _issue = string.Join("  ·  ", new[] { estimate.House.Job.Name, day, letterhead.Company }.Where(t => t.Length > 0));
    }

    /// <summary>The paper as a .pdf file. The same estimate gives the same bytes.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="letterhead">Whose crew it is, and when.</param>
    public static byte[] Write(JobEstimate estimate, Letterhead letterhead)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        ArgumentNullException.ThrowIfNull(letterhead);
        using var paper = new Paper(new PaperTitle("Crew package", estimate.House.Job.Name, letterhead));
        new CrewPaper(paper, estimate, letterhead).Write();
        return paper.ToBytes();
    }

    private void Write()
    {
        First();
        Kit();
        PullList();
        Cuts();
        DeviceSchedule();
        BoxSchedule();
        Cards();
        Tests();
        Doors();
    }

    private void First()
    {
        var job = _estimate.House.Job;
        _paper.Section("Before you start");
        _paper.Line("Code", $"NEC {(int)job.Code.Edition} and the local amendments");
        _paper.Line("Work", string.Create(CultureInfo.InvariantCulture, $"{_estimate.Wiring.Circuits.Length} circuits, {_estimate.Wiring.Boxes.Length} boxes, {_estimate.Takeoff.Openings.Value:0} openings, {_estimate.Labor.Total.Value:0.0} hours"));
        _paper.Line("Labels", "A circuit is called by its space in the panel, a box by its circuit and its place in the chain: 12.3 is the third box of the circuit in space 12. Write the label on each cable end and in each box.");
        foreach (var finding in _estimate.Findings.Where(f => f.Severity is Severity.Mandatory))
        {
            _paper.Say($"Settle first: {finding.Text}", PaperLook.Warning);
        }

        foreach (var unknown in job.Unknowns)
        {
            _paper.Line("Not known yet", unknown.Text.Length > 0 ? unknown.Text : PlaceWords.Kind(unknown.Topic));
        }
    }

    private void Kit()
    {
        _paper.Section("Tools and consumables");
        _paper.Say("What is in this job asks for them. Numbers that are not of the takeoff are starting points.", PaperLook.Soft);
        var table = new PaperTable(PaperColumn.Tick("", 0.5), PaperColumn.Figures("How many", 1), new("", 0.7), new("What", 5), new("Because of", 3));
        foreach (var group in KitLine.Of(_estimate).GroupBy(l => l.Consumable))
        {
            table.Band(group.Key ? "Consumables" : "Tools");
            foreach (var line in group)
            {
                table.Row("", PaperFigures.Plain(line.Count), line.Unit == "foot" ? "ft" : line.Unit == "each" ? "" : line.Unit, line.Name, line.Because);
            }
        }

        _paper.Table(table);
    }

    private void PullList()
    {
        _paper.SectionOnNewPage("Pull list", landscape: true);
        _paper.Say("Each run is one piece; make-up, slack and tolerance are in the length. If the way on site differs, measure first.", PaperLook.Soft);
        var runs = PulledRun.Of(_estimate, _labels).ToList();
        var sums = new PaperTable(new("Cable", 3), PaperColumn.Figures("Runs", 1), PaperColumn.Figures("Length, ft in", 2));
        foreach (var cable in runs.GroupBy(r => r.Cable).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            sums.Row(cable.Key, PaperFigures.Whole(cable.Count()), Sum(cable).ToString());
        }

        sums.Total("All runs", PaperFigures.Whole(runs.Count), Sum(runs).ToString());
        _paper.Table(sums);
        var table = new PaperTable(PaperColumn.Tick("", 0.35), new("From", 3.3), new("To", 3.3), new("Cable", 1.1), PaperColumn.Figures("Length, ft in", 1.5), new("Carries", 1.7), new("Way", 2.8));
        foreach (var circuit in runs.GroupBy(r => (r.Circuit, r.Name)))
        {
            table.Band($"{circuit.Key.Circuit}  {circuit.Key.Name}");
            foreach (var run in circuit)
            {
                table.Row("", run.From, run.To, run.Cable, run.Length.ToString(), run.Carries, run.Way);
            }
        }

        _paper.Table(table);
    }

    // Of the lengths as they are printed, to the sixteenth of an inch, so that the list adds up.
    private static Length Sum(IEnumerable<PulledRun> runs) => Length.FromSixteenths(runs.Sum(r => (long)r.Length.ToSixteenths()));

    private void Cuts()
    {
        _paper.SectionOnNewPage("Cut plan", landscape: true);
        _paper.Say("In this order. Trim the free end square before each cut; marks count from the free end of the whole coil.", PaperLook.Soft);
        var (names, runs) = (_estimate.Purchase.Lines.DistinctBy(l => l.ItemId).ToDictionary(l => l.ItemId, l => l.Description, StringComparer.Ordinal), PulledRun.Of(_estimate, _labels).DistinctBy(r => r.Run).ToDictionary(r => r.Run, StringComparer.Ordinal));
        var table = new PaperTable(PaperColumn.Tick("", 0.35), PaperColumn.Figures("Cut", 0.5), PaperColumn.Figures("Length, ft in", 1.4), PaperColumn.Figures("Cut at mark", 1.4), PaperColumn.Figures("Left on coil", 1.4), new("From", 3.6), new("To", 3.6));
        foreach (var cut in _estimate.Purchase.Cuts)
        {
            for (var c = 0; c < cut.Coils.Length; c++)
            {
                Coil(table, $"{names[cut.ItemId]}, coil {c + 1} of {cut.Coils.Length}", cut, cut.Coils[c], runs);
            }

            foreach (var piece in cut.TooLong)
            {
                table.Band($"{names[cut.ItemId]}: {piece.Length} for {piece.Run} is longer than any coil");
            }
        }

        _paper.Table(table);
    }

    private static void Coil(PaperTable table, string title, CutPlan cut, CutCoil coil, Dictionary<string, PulledRun> runs)
    {
        table.Band(string.Create(CultureInfo.InvariantCulture, $"{title}: {CutWords.Coil(coil)}, {coil.Pieces.Length} pieces, {coil.Left} stays on it{(cut.IsKept(coil) ? ", keep" : "")}"));
        var marks = coil.Marks;
        for (var i = 0; i < coil.Pieces.Length; i++)
        {
            var piece = coil.Pieces[i];
            var run = runs.GetValueOrDefault(piece.Run[(piece.Run.IndexOf(": ", StringComparison.Ordinal) + 2)..]);
            table.Row("", PaperFigures.Whole(i + 1), piece.Length.ToString(), marks[i].ToString(), (coil.Length - marks[i]).ToString(), run?.From ?? "", run?.To ?? piece.Run);
        }
    }

    private void DeviceSchedule()
    {
        _paper.SectionOnNewPage("Device schedule by room");
        var table = new PaperTable(PaperColumn.Tick("", 0.5), new("Device", 4), PaperColumn.Figures("Height", 1.2), new("Box", 1.1), new("Circuit", 1.1), new("Note", 2.6));
        foreach (var room in SetDevice.Of(_estimate, _labels).GroupBy(d => d.Room))
        {
            table.Band(string.Create(CultureInfo.InvariantCulture, $"{room.Key}: {room.Count()}"));
            foreach (var device in room)
            {
                table.Row("", device.Name, device.Height, device.Box, device.Circuit, device.Note);
            }
        }

        _paper.Table(table);
    }

    private void BoxSchedule()
    {
        _paper.Section("Box schedule");
        var table = new PaperTable(PaperColumn.Tick("", 0.5), new("Box", 1), new("Room and what it holds", 3.6), new("The box", 4.2), PaperColumn.Figures("Cu in", 0.85), PaperColumn.Figures("Needed", 1.05), PaperColumn.Figures("Cables", 1), PaperColumn.Figures("Splices", 1.05));
        foreach (var box in MadeUpBox.Of(_estimate, _labels))
        {
            table.Row("", box.Label, box.Serves, box.Item, box.VolumeIn3 is { } volume ? PaperFigures.Tenths(volume) : "", PaperFigures.Hundredths(box.NeededIn3), PaperFigures.Whole(box.Cables), PaperFigures.Whole(box.Splices));
        }

        _paper.Table(table);
    }

    private void Cards()
    {
        _paper.SectionOnNewPage("Box cards");
        var width = (_paper.Width - CardGap) / 2;
        foreach (var pair in MadeUpBox.Of(_estimate, _labels).Select(b => new BoxCard(_estimate, _labels, _paper.Pen, b.Index, width)).Chunk(2))
        {
            _paper.Draw(pair.Max(c => c.Height), (page, top) =>
            {
                for (var i = 0; i < pair.Length; i++)
                {
                    pair[i].Draw(page, Paper.LeftEdge + i * (width + CardGap), top);
                }
            });
        }
    }

    private void Tests()
    {
        _paper.SectionOnNewPage("Test sheet");
        _paper.Say(Cautions.AtWork, PaperLook.Soft);
        var table = new PaperTable(new("Test", 4.6), new("Power", 0.8), new("Expected", 2.6), PaperColumn.Blank("Found", 1.6), PaperColumn.Tick("Right", 0.7));
        foreach (var circuit in TestLine.Of(_estimate, _labels).GroupBy(t => (t.On, t.Name)))
        {
            table.Band($"{circuit.Key.On}  {circuit.Key.Name}");
            foreach (var test in circuit)
            {
                table.Row(test.Test, test.Live ? "on" : "off", test.Expected);
            }
        }

        _paper.Table(table);
        _paper.Sign("Tested by");
    }

    private void Doors()
    {
        foreach (var schedule in _estimate.Schedules.Panels)
        {
            var panel = _estimate.House.Job.Panels.First(p => p.Id == schedule.PanelId);
            _paper.SectionOnNewPage($"Door card of panel {panel.Called()}");
            var card = new DoorCard(schedule, panel, _paper.Pen);
            _paper.Draw(card.Height, (page, top) => card.Draw(page, Paper.LeftEdge + 8, top, _issue));
        }
    }
}
