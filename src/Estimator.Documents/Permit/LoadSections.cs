using System.Globalization;
using Estimator.Documents.House;
using Estimator.Documents.Loads;
using Estimator.Documents.Papers;
using Estimator.Engine;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.Loads;

namespace Estimator.Documents.Permit;

/// <summary>The sections of the permit's paper on loads: the service by each method, every worksheet with its articles, and feeders.</summary>
internal sealed class LoadSections(Paper paper, JobEstimate estimate)
{
    private static readonly string[] ServiceCodes = ["service-load", "service-load-unknown", "service-least", "panel-spaces", "panel-tandems", "panel-make", "feeder-load", "feeder-drop", "feeder-too-large"];

    internal void Service()
    {
        paper.Section("Service");
        if (estimate.Loads.Sheets.IsEmpty)
        {
            paper.Say("The service was not calculated: the rest of the dwelling is not stated with the panel.", PaperLook.Warning);
        }
        else if (estimate.House.Job.Panels.FirstOrDefault(p => p.FedFrom is null) is { } service)
        {
            var table = new PaperTable(new("Method", 3), new("Article", 2), PaperColumn.Figures("Load, VA", 1.4), PaperColumn.Figures("Load, A", 1), PaperColumn.Figures("Service panel, A", 1.4));
            foreach (var sheet in estimate.Loads.Sheets)
            {
                table.Row(LoadWords.Of(sheet), sheet.Article, PaperFigures.Plain(sheet.TotalVa.Value), PaperFigures.Whole(sheet.Amperes.Value), PaperFigures.Whole(service.RatingA.ToAmperes()));
            }

            paper.Table(table);
        }

        foreach (var finding in estimate.Findings.Where(f => ServiceCodes.Contains(f.Code)))
        {
            paper.Say($"{finding.Text}{(finding.Article.Length > 0 ? $" NEC {finding.Article}." : "")}{(finding.Verified ? "" : " Not verified in this edition.")}", finding.Severity is Severity.Mandatory ? PaperLook.Warning : PaperLook.Body);
        }
    }

    internal void Worksheets()
    {
        foreach (var sheet in estimate.Loads.Sheets)
        {
            paper.Section($"{LoadWords.Of(sheet)}, {sheet.Article}");
            Worksheet(sheet);
        }

        foreach (var feeder in estimate.Loads.Feeders)
        {
            Feeder(feeder);
        }
    }

    private void Feeder(FeederLoad feeder)
    {
        paper.Section($"Feeder of {PlaceWords.Panel(estimate, feeder.PanelId)}");
        if (estimate.Wiring.Feeders.FirstOrDefault(f => f.To == feeder.PanelId) is { } run)
        {
            paper.Say(string.Create(
                CultureInfo.InvariantCulture,
                $"{run.CableName} on a breaker of {run.BreakerA.Value:0} A, {run.Total.AsLength().Value} long, conductors good for {run.AmpacityA.Value:0} A, grounding conductor {run.Ground}{(feeder.VoltageDropPercent is { } drop ? $", voltage drop {drop.Value:0.00}%" : "")}. Four wires; the neutral is kept apart from the grounding conductor in the fed panel. NEC 250.122, 310.16."));
        }

        Worksheet(feeder.Sheet);
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

        paper.Table(table);
        if (sheet.HeatUsed is { } heat)
        {
            paper.Say(heat ? "The heating season decides." : "The cooling season decides.", PaperLook.Soft);
        }

        foreach (var note in sheet.Notes)
        {
            paper.Say(note, PaperLook.Soft);
        }
    }

    private static string FigureWords(Unit unit) => unit is Unit.Amperes ? "A" : "VA";
}
