using System.Globalization;
using System.Text.Json;
using Estimator.Engine;
using Estimator.Engine.Explanations;
using Estimator.Engine.Loads;
using Estimator.Engine.Panels;
using Estimator.Engine.Wiring.Circuits;

namespace Estimator.Documents.Tables;

/// <summary>Panel schedules and load calculations as CSV.</summary>
internal static class PanelTables
{
    /// <summary>Every space of every panel, the free ones too.</summary>
    internal static string Schedule(JobEstimate estimate) => Csv.Write(
        ["panel", "space", "leg", "breaker_a", "poles", "half_of_tandem", "circuit", "name", "origin", "load_va", "leg_a_va", "leg_b_va", "imbalance_va", "least_imbalance_va", "node"],
        estimate.Schedules.Panels.SelectMany(s => s.Breakers.SelectMany(b => b.Spaces.Select(n => (Space: n, Row: Row(s, b, n))))
            .Concat(s.FreeSpaces.Select(n => (Space: n, Row: (CsvCell[])[s.PanelId, Csv.Number(n), Leg(n), "", "", "", "", "", "free", .. Legs(s), ""])))
            .OrderBy(x => x.Space).Select(x => x.Row).Concat(s.Unplaced.Select(b => (CsvCell[])
            [s.PanelId, "", "", Csv.Number(b.BreakerA), Csv.Number(b.Poles), "", b.Id, b.Name, "no space", Csv.Number(b.LoadVa.Value), "", "", "", "", Node(b.LoadVa.Node)]))));

    /// <summary>The spaces and the leg of a circuit; empty where its panel has no space for it.</summary>
    internal static IEnumerable<CsvCell> Place(JobEstimate estimate, Circuit circuit) =>
        estimate.Schedules[estimate.Layout.Panels[circuit.Panel].Source.Id].Breakers.FirstOrDefault(b => b.Breaker.Id == estimate.Wiring.BreakerOf(circuit).Id) is { } placed
            ? [string.Join(" ", placed.Spaces), JsonNamingPolicy.SnakeCaseLower.ConvertName(placed.Leg.ToString())] : ["", ""];

    /// <summary>Every line of every calculation.</summary>
    internal static string Loads(JobEstimate estimate) => Csv.Write(
        ["calculation", "panel", "line", "label", "value", "unit", "article", "verified", "node"],
        estimate.Loads.Sheets.SelectMany(s => Lines(s, "")).Concat(estimate.Loads.Feeders.SelectMany(f => Lines(f.Sheet, f.PanelId))));

    private static IEnumerable<CsvCell[]> Lines(LoadWorksheet sheet, string panel) => sheet.Lines.Select(l => (CsvCell[])
    [
        sheet.Method, panel, l.Id, l.Label, Csv.Number(l.Value.Value), l.Value.Unit is Unit.Amperes ? "A" : "VA", l.Article, l.Verified ? "yes" : "no", Node(l.Value.Node),
    ]);

    private static CsvCell[] Row(PanelSchedule schedule, ScheduledBreaker placed, int space) =>
    [
        schedule.PanelId, Csv.Number(space), Leg(space), Csv.Number(placed.Breaker.BreakerA), Csv.Number(placed.Breaker.Poles), placed.Half ? "yes" : "no", placed.Breaker.Id, placed.Breaker.Name,
        JsonNamingPolicy.SnakeCaseLower.ConvertName(placed.Breaker.Origin.ToString()), Csv.Number(placed.Breaker.LoadVa.Value / placed.Spaces.Length), .. Legs(schedule)[1..], Node(placed.Breaker.LoadVa.Node),
    ];

    private static CsvCell[] Legs(PanelSchedule s) => ["", Csv.Number(s.LegAVa.Value), Csv.Number(s.LegBVa.Value), Csv.Number(s.ImbalanceVa.Value), Csv.Number(s.LowerBoundVa)];

    private static string Leg(int space) => (space - 1) / 2 % 2 == 0 ? "A" : "B";

    private static string Node(NodeRef node) => string.Create(CultureInfo.InvariantCulture, $"{node.Page}.{node.Index}");
}
