using System.Collections.Immutable;
using Estimator.Engine.Panels;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;
using Estimator.Web.Overview;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Circuits;

/// <summary>The panel as a cabinet, and the circuits beside it.</summary>
public sealed partial class CircuitsPage
{
    private static readonly ImmutableArray<(string, string, string)> Files =
    [
        ("permit.pdf", "Load calculation and panel schedules", "for the permit: every line with its article"), ("permit.xlsx", "Load calculation as workbook", "lines that follow when a nameplate is changed"), ("crew.pdf", "Crew package", "what to bring, pull, cut, set and test; box cards, door cards"),
        ("panel-schedule.csv", "Panel schedule as CSV", "every space with its leg"), ("loads.csv", "Load calculation as CSV", "line by line, each with its article"), ("circuits.csv", "Circuits as CSV", "breaker, wire, load, drop"), ("boxes.csv", "Boxes as CSV", "fill, cables, splices"), ("box-contents.csv", "Joints as CSV", "what meets in each box"),
    ];

    private CircuitFigures? _figures;
    private PricedJob? _measured;

    /// <summary>The job of the address.</summary>
    [Parameter]
    public string JobId { get; set; } = "";

    /// <inheritdoc/>
    protected override Task OnInitializedAsync() => DeskChangedAsync();

    /// <inheritdoc/>
    protected override async Task DeskChangedAsync()
    {
        if (Desk.Priced is not { } priced || ReferenceEquals(priced, _measured))
        {
            return;
        }

        _measured = priced;
        var figures = await Task.Run(() => CircuitFigures.Of(priced), Gone);
        if (ReferenceEquals(priced, _measured))
        {
            _figures = figures;
        }
    }

    private static int SpacesLeft(PricedJob priced) => Math.Max(0, priced.Job.Panels.Sum(p => PanelRoom.FreeSpaces(priced.Job, p)) - priced.Estimate.Wiring.Circuits.Sum(c => c.Poles));

    private static string Sharing(PricedJob priced, CircuitFigures figures, Engine.Wiring.Circuits.Circuit circuit) => circuit.SharesNeutralWith is { } other
        ? $", shares a neutral with {figures.Rows.First(r => r.Circuit.Id == priced.Estimate.Wiring.Circuits[other].Id).Number}" : "";

    private static string? Rating(PricedJob priced) =>
        priced.Job.Panels.FirstOrDefault(p => p.FedFrom is null) is { } service ? $"{American.Number(service.RatingA.ToAmperes())} A" : null;

    private static string ProtectionWords(Protection protection, int poles) => $"{(poles == 2 ? "2-pole " : "")}{protection switch
    {
        Protection.ArcFault => "AFCI",
        Protection.GroundFault => "GFCI",
        Protection.DualFunction => "dual-function",
        _ => "",
    }}".TrimEnd();

    private static string Method(string method) => method switch
    {
        "standard" => "Dwelling load, standard method",
        "optional" => "Dwelling load, optional method",
        "existing" => "Load with what is there",
        "measured" => "Load by what was measured",
        _ => method,
    };
}
