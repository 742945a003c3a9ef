using System.Globalization;
using Estimator.Documents.House;
using Estimator.Documents.Papers;
using Estimator.Engine;
using Estimator.Engine.House;

namespace Estimator.Documents.Permit;

/// <summary>What is handed in with a permit: each load worksheet with its articles, feeders, the service, and every panel space by space.</summary>
public sealed class PermitPaper
{
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
        var loads = new LoadSections(_paper, _estimate);
        Basis();
        Equipment();
        loads.Service();
        loads.Worksheets();
        new PanelSections(_paper, _estimate).Panels();
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
            _paper.Line(panel.FedFrom is null ? "Service panel" : "Subpanel", PanelSections.Words(panel));
        }

        if (job.Service is { } service)
        {
            var rating = (service.RatingA ?? job.Panels.First(p => p.FedFrom is null).RatingA).ToAmperes();
            _paper.Line("Service", string.Create(CultureInfo.InvariantCulture, $"{rating:0} A, {(service.Entrance is ServiceEntrance.Overhead ? "overhead" : "underground")}, conductors of {(service.Metal is ConductorMetal.Copper ? "copper" : "aluminium")}"));
        }

        var verified = loads.Sheets.Concat(loads.Feeders.Select(f => f.Sheet)).All(s => s.Verified);
        _paper.Line("Rules", verified ? "Every rule used was read in this edition." : "Rules marked \"not verified\" were not read in this edition: look them up there before this is handed in.");
    }

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
}
