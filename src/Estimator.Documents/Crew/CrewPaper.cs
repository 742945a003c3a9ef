using System.Globalization;
using Estimator.Documents.House;
using Estimator.Documents.Papers;
using Estimator.Engine;
using Estimator.Engine.Findings;

namespace Estimator.Documents.Crew;

/// <summary>What a crew takes along: what to bring, what to pull, how to cut, what to set where, how each box is made up, what to test, and the door card of each panel.</summary>
public sealed class CrewPaper
{
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
        var (cable, schedules) = (new CableSections(_paper, _estimate, _labels), new ScheduleSections(_paper, _estimate, _labels));
        First();
        schedules.Kit();
        cable.PullList();
        cable.Cuts();
        schedules.DeviceSchedule();
        schedules.BoxSchedule();
        schedules.Cards();
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
            _paper.SectionOnNewPage($"Door card: {PlaceWords.Titled(panel)}");
            var card = new DoorCard(schedule, panel, _paper.Pen);
            _paper.Draw(card.Height, (page, top) => card.Draw(page, Paper.LeftEdge + 8, top, _issue));
        }
    }
}
