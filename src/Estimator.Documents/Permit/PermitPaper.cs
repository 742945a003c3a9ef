using System.Globalization;
using Estimator.Documents.House;
using Estimator.Documents.Loads;
using Estimator.Documents.Papers;
using Estimator.Engine;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Loads;
using Estimator.Engine.Panels;

namespace Estimator.Documents.Permit;

/// <summary>What is handed in with a permit: each load worksheet with its articles, feeders, the service, and every panel space by space.</summary>
public sealed class PermitPaper
{
    private static readonly string[] ServiceCodes = ["service-load", "service-load-unknown", "service-least", "panel-spaces", "panel-tandems", "panel-make", "feeder-load", "feeder-drop", "feeder-too-large"];

    private const double SignatureHeight = 80;

    private readonly JobEstimate _estimate;
    private readonly Paper _paper;

    private PermitPaper(Paper paper, JobEstimate estimate) => (_paper, _estimate) = (paper, estimate);

    /// <summary>The paper as a .pdf file. The same estimate gives the same bytes.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="letterhead">Who hands it in, and when.</param>
    public static byte[] Write(JobEstimate estimate, Letterhead letterhead)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        using var paper = new Paper(new PaperTitle("Load calculation and panel schedules", estimate.House.Job.Name, letterhead));
        new PermitPaper(paper, estimate).Write();
        return paper.ToBytes();
    }

    private void Write()
    {
        Basis();
        Equipment();
        Service();
        foreach (var sheet in _estimate.Loads.Sheets)
        {
            _paper.Section($"{LoadWords.Of(sheet)}, {sheet.Article}");
            Worksheet(sheet);
        }

        foreach (var feeder in _estimate.Loads.Feeders)
        {
            Feeder(feeder);
        }

        foreach (var schedule in _estimate.Schedules.Panels)
        {
            Panel(schedule);
        }

        _paper.Section("Prepared by");
        _paper.Need(SignatureHeight);
        _paper.Say("A licensed person looks through this calculation and signs it where the authority having jurisdiction asks for that.");
        _paper.Sign("Prepared by", "License holder");
    }

    private void Basis()
    {
        var (job, loads) = (_estimate.House.Job, _estimate.Loads);
        _paper.Section("Basis");
        _paper.Line("Code", $"NEC {(int)job.Code.Edition}{(job.Code.PermitDate is { } day ? string.Create(CultureInfo.InvariantCulture, $", permit asked for on {day:MMMM d, yyyy}") : "")}");
        foreach (var amendment in job.Code.Amendments)
        {
            _paper.Line("Local amendment", amendment.Text.Length > 0 ? amendment.Text : amendment.Rule);
        }

        foreach (var panel in job.Panels)
        {
            _paper.Line(panel.FedFrom is null ? "Service panel" : "Subpanel", PanelWords(panel));
        }

        if (job.Service is { } service)
        {
            var rating = (service.RatingA ?? job.Panels.First(p => p.FedFrom is null).RatingA).ToAmperes();
            _paper.Line("Service", string.Create(CultureInfo.InvariantCulture, $"{rating:0} A, {(service.Entrance is ServiceEntrance.Overhead ? "overhead" : "underground")}, conductors of {(service.Metal is ConductorMetal.Copper ? "copper" : "aluminium")}"));
        }

        var verified = loads.Sheets.Concat(loads.Feeders.Select(f => f.Sheet)).All(s => s.Verified);
        _paper.Line("Rules", verified ? "Every rule used was read in this edition." : "Rules marked \"not verified\" were not read in this edition: look them up there before this is handed in.");
    }

    private static string PanelWords(Panel panel) => string.Create(
        CultureInfo.InvariantCulture,
        $"{panel.Called()}, {panel.RatingA.ToAmperes():0} A, {panel.Spaces} spaces{(panel.Existing ? ", there already" : ", new")}{(panel.Make is { Length: > 0 } make ? $", {make} {panel.Series}" : "")}");

    private void Equipment()
    {
        if (_estimate.Layout.Equipment.IsEmpty)
        {
            return;
        }

        _paper.Section("Equipment");
        var table = new PaperTable(new("Equipment", 3), new("Room", 2), new("Connected by", 2), PaperColumn.Figures("Volts", 1), PaperColumn.Figures("Load, VA", 1.3));
        for (var i = 0; i < _estimate.Layout.Equipment.Length; i++)
        {
            var laid = _estimate.Layout.Equipment[i];
            table.Row(PlaceWords.Equipment(_estimate, i), PlaceWords.Room(_estimate.House.Rooms[laid.Place.Room]), PlaceWords.Kind(laid.Connection), PaperFigures.Whole(laid.Volts.Value), PaperFigures.Plain(laid.LoadVa.Value));
        }

        table.Total("Connected load", "", "", "", PaperFigures.Plain(_estimate.Layout.Equipment.Sum(e => e.LoadVa.Value)));
        _paper.Table(table);
    }

    private void Service()
    {
        _paper.Section("Service");
        if (_estimate.Loads.Sheets.IsEmpty)
        {
            _paper.Say("The service was not calculated: the rest of the dwelling is not stated with the panel.", PaperLook.Warning);
        }
        else if (_estimate.House.Job.Panels.FirstOrDefault(p => p.FedFrom is null) is { } service)
        {
            var table = new PaperTable(new("Method", 3), new("Article", 2), PaperColumn.Figures("Load, VA", 1.4), PaperColumn.Figures("Load, A", 1), PaperColumn.Figures("Service panel, A", 1.4));
            foreach (var sheet in _estimate.Loads.Sheets)
            {
                table.Row(LoadWords.Of(sheet), sheet.Article, PaperFigures.Plain(sheet.TotalVa.Value), PaperFigures.Whole(sheet.Amperes.Value), PaperFigures.Whole(service.RatingA.ToAmperes()));
            }

            _paper.Table(table);
        }

        foreach (var finding in _estimate.Findings.Where(f => ServiceCodes.Contains(f.Code)))
        {
            _paper.Say($"{finding.Text}{(finding.Article.Length > 0 ? $" NEC {finding.Article}." : "")}{(finding.Verified ? "" : " Not verified in this edition.")}", finding.Severity is Severity.Mandatory ? PaperLook.Warning : PaperLook.Body);
        }
    }

    private void Worksheet(LoadWorksheet sheet)
    {
        var table = new PaperTable(new("Line", 5), new("Article", 2), PaperColumn.Figures("Figure", 1.5));
        foreach (var line in LoadWords.Shown(sheet))
        {
            var cells = (string[])[line.Label, $"{line.Article}{(line.Verified ? "" : ", not verified")}", $"{PaperFigures.Plain(line.Value.Value)} {FigureWords(line.Value.Unit)}"];
            if (LoadWords.IsTotal(line))
            {
                table.Total(cells);
            }
            else
            {
                table.Row(cells);
            }
        }

        _paper.Table(table);
        if (sheet.HeatUsed is { } heat)
        {
            _paper.Say(heat ? "The heating season decides." : "The cooling season decides.", PaperLook.Soft);
        }

        foreach (var note in sheet.Notes)
        {
            _paper.Say(note, PaperLook.Soft);
        }
    }

    private static string FigureWords(Unit unit) => unit is Unit.Amperes ? "A" : "VA";

    private void Feeder(FeederLoad feeder)
    {
        _paper.Section($"Feeder of {PlaceWords.Panel(_estimate, feeder.PanelId)}");
        if (_estimate.Wiring.Feeders.FirstOrDefault(f => f.To == feeder.PanelId) is { } run)
        {
            _paper.Say(string.Create(
                CultureInfo.InvariantCulture,
                $"{run.CableName} on a breaker of {run.BreakerA.Value:0} A, {run.Total.AsLength().Value} long, conductors good for {run.AmpacityA.Value:0} A, grounding conductor {run.Ground}{(feeder.VoltageDropPercent is { } drop ? $", voltage drop {drop.Value:0.00}%" : "")}. Four wires; the neutral is kept apart from the grounding conductor in the fed panel. NEC 250.122, 310.16."));
        }

        Worksheet(feeder.Sheet);
    }

    private void Panel(PanelSchedule schedule)
    {
        var panel = _estimate.House.Job.Panels.First(p => p.Id == schedule.PanelId);
        _paper.SectionOnNewPage($"Panel {panel.Called()}");
        _paper.Say(PanelWords(panel), PaperLook.Soft);
        var table = new PaperTable(
            new("Circuit", 4), PaperColumn.Figures("A", 0.8), PaperColumn.Figures("VA", 1.1), PaperColumn.Figures("", 0.7), new("", 0.7), PaperColumn.Figures("VA", 1.1), PaperColumn.Figures("A", 0.8), new("Circuit", 4));
        var spaces = PanelSpace.Of(schedule).ToList();
        foreach (var pair in spaces.Chunk(2))
        {
            var (left, right) = (Side(pair[0]), pair.Length > 1 ? Side(pair[1]) : ["", "", "", ""]);
            table.Row(left[0], left[1], left[2], left[3], right[3], right[2], right[1], right[0]);
        }

        _paper.Table(table);
        Legs(schedule, spaces);
        foreach (var breaker in schedule.Unplaced)
        {
            _paper.Say($"No space was found for {breaker.Name}.", PaperLook.Warning);
        }

        foreach (var note in schedule.Notes)
        {
            _paper.Say(note, PaperLook.Soft);
        }
    }

    private void Legs(PanelSchedule schedule, List<PanelSpace> spaces)
    {
        var table = new PaperTable(new("Legs", 5), PaperColumn.Figures("Load, VA", 1));
        table.Row("Leg A", PaperFigures.Plain(schedule.LegAVa.Value));
        table.Row("Leg B", PaperFigures.Plain(schedule.LegBVa.Value));
        table.Total("Both legs", PaperFigures.Plain(spaces.Sum(s => s.LoadVa)));
        _paper.Table(table);
        _paper.Say($"The legs are {PaperFigures.Plain(schedule.ImbalanceVa.Value)} VA apart. What was stated with no load counts nothing. NEC 408.4(A), 210.11(B).", PaperLook.Soft);
    }

    private static string[] Side(PanelSpace space) => space.Breakers.Count == 0
        ? ["spare", "", "", space.Number.ToString(CultureInfo.InvariantCulture)]
        : [space.Name, string.Join("+", space.Breakers.Select(b => PaperFigures.Whole(b.Breaker.BreakerA))), PaperFigures.Plain(space.LoadVa), space.Number.ToString(CultureInfo.InvariantCulture)];
}
