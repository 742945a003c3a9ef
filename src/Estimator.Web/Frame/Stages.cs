using System.Collections.Immutable;
using Estimator.Web.Figures;

namespace Estimator.Web.Frame;

/// <summary>The stages in the order in which data flows. A stage stands here when its page exists.</summary>
public static class Stages
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<Stage> All { get; } =
    [
        new("overview", "Overview", StagePlace.Line, _ => ("", "")),
        new("site", "Site", StagePlace.Line, p => (American.Number(p.Job.Unknowns.Length), "unknown")),
        new("rooms", "Rooms", StagePlace.Line, p => (American.Number(p.Figures.Rooms.Value), "")),
        new("equipment", "Equipment", StagePlace.Line, p => (American.Number(p.Job.Equipment.Length), p.Job.Equipment.Length == 1 ? "piece" : "pieces")),
        new("plan", "Plan", StagePlace.Line, p => (FigureText.Of(p.Estimate.Takeoff.Openings, FigureForm.Whole).Number, "openings")),
        new("circuits", "Circuits", StagePlace.Line, p => (American.Number(p.Figures.Circuits.Value), "")),
        new("checks", "Checks", StagePlace.Tap, p => (American.Number(Findings.FindingList.Shown(p.Estimate.Findings).Count()), "")),
        new("takeoff", "Takeoff", StagePlace.Line, p => (American.Number(p.Figures.CableFeet.Value), "ft")),
        new("purchase", "Purchase", StagePlace.Line, p => (American.WholeDollars(p.Estimate.Purchase.Total.Value), "")),
        new("labor", "Labor", StagePlace.SecondWay, p => (American.Fixed(p.Estimate.Labor.Total.Value, 1), "h")),
        new("bid", "Bid", StagePlace.Line, p => (American.WholeDollars(p.Estimate.Bid.Price.Value), "")),
        new("contract", "Contract", StagePlace.Tap, _ => ("", "")),
        new("actuals", "Actuals", StagePlace.Line, _ => ("", "")),
    ];

    /// <summary>Address of a stage of a job.</summary>
    public static string Address(string jobId, string slug) => $"/jobs/{Uri.EscapeDataString(jobId)}/{slug}";
}
