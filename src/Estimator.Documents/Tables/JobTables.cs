using System.Globalization;
using Estimator.Documents.House;
using Estimator.Documents.Labor;
using Estimator.Documents.Pricing;
using Estimator.Documents.Purchase;
using Estimator.Engine;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.Payments;

namespace Estimator.Documents.Tables;

/// <summary>Every table of an estimate as CSV. Units stand in the names of columns; <c>node</c> names the figure's explanation in the JSON of the estimate.</summary>
public static class JobTables
{
    /// <summary>One table of an estimate.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="table">Which one.</param>
    /// <param name="catalogue">The catalogue that it was made with; alternates, unit prices and the schedule of values are worked out with it.</param>
    public static string Write(JobEstimate estimate, JobTable table, PartsCatalogue catalogue) => table switch
    {
        JobTable.Takeoff => Takeoff(estimate),
        JobTable.Labor => Labor(estimate),
        JobTable.Purchase => PurchaseTables.Purchase(estimate.Purchase),
        JobTable.CutPlan => PurchaseTables.CutPlan(estimate.Purchase, [estimate]),
        JobTable.Circuits => Circuits(estimate),
        JobTable.PanelSchedule => PanelTables.Schedule(estimate),
        JobTable.Loads => PanelTables.Loads(estimate),
        JobTable.Devices => Devices(estimate),
        JobTable.Findings => Findings(estimate),
        JobTable.Range => Range(estimate),
        JobTable.Bid => BidTables.Bid(estimate),
        JobTable.PullList => CrewTables.PullList(estimate),
        JobTable.Boxes => CrewTables.Boxes(estimate),
        JobTable.BoxContents => CrewTables.BoxContents(estimate),
        JobTable.Tools => CrewTables.Kit(estimate),
        JobTable.Tests => CrewTables.Tests(estimate),
        JobTable.LeftOver => PurchaseTables.LeftOver(estimate.Purchase),
        JobTable.Explanations => BidTables.Explanations(estimate),
        JobTable.Alternates => OfferTables.Alternates(CustomerOffer.Of(estimate, catalogue)),
        JobTable.UnitPrices => OfferTables.UnitPrices(CustomerOffer.Of(estimate, catalogue)),
        JobTable.ScheduleOfValues => OfferTables.ScheduleOfValues(PaymentPlanning.Compute(estimate, catalogue)),
        _ => throw new ArgumentOutOfRangeException(nameof(table), table, "There is no such table."),
    };

    private static string Takeoff(JobEstimate estimate) => Csv.Write(
        ["item", "category", "description", "unit", "quantity", "owner_supplied", "where", "node"],
        estimate.Takeoff.Lines.Select(l => (CsvCell[])
        [
            l.ItemId, l.Category, l.Description, l.Unit, Csv.Number(l.Quantity.Value), YesNo(l.OwnerSupplied), string.Join("; ", l.Where), Node(l.Quantity.Node),
        ]));

    private static string Labor(JobEstimate estimate) => Csv.Write(
        ["item", "description", "phase", "quantity", "hours", "basis", "factors", "node"],
        estimate.Labor.Lines.Select(l => (CsvCell[])
        [
            l.ItemId, l.Description, Snake(l.Phase), Csv.Number(l.Quantity.Value), Csv.Number(l.Hours.Value), l.Basis, LaborWords.Of(l.Factors), Node(l.Hours.Node),
        ]));

    private static string Circuits(JobEstimate estimate) => Csv.Write(
        ["circuit", "name", "panel", "kind", "breaker_a", "poles", "protection", "first_receptacle_protects", "wire_awg", "outlets", "load_va", "voltage_drop_percent", "cable_ft", "boxes", "spaces", "leg", "shares_neutral_with"],
        estimate.Wiring.Circuits.Select(c => (CsvCell[])
        [
            c.Id, c.Name, estimate.Layout.Panels[c.Panel].Source.Id, Snake(c.Kind), Csv.Number(c.BreakerA.Value), Csv.Number(c.Poles), Snake(c.Protection), YesNo(c.FirstReceptacleProtects),
            c.Wire.ToString(), Csv.Number(c.Outlets), Csv.Number(c.LoadVa.Value), Csv.Number(c.VoltageDropPercent.Value),
            Csv.Number(c.Runs.Sum(r => estimate.Wiring.Runs[r].Total.AsLength().Value.ToFeet())), Csv.Number(c.Boxes.Length), .. PanelTables.Place(estimate, c),
            c.SharesNeutralWith is { } other ? estimate.Wiring.Circuits[other].Id : "",
        ]));

    private static string Devices(JobEstimate estimate)
    {
        var circuits = estimate.Wiring.Boxes.SelectMany(b => b.Devices.Select(d => (d, b))).ToLookup(x => x.d, x => x.b);
        return Csv.Write(
            ["device", "kind", "room", "room_name", "mount", "x", "y", "height", "place_assumed", "owner_supplied", "box", "circuit"],
            estimate.Layout.Devices.Select((d, i) => (CsvCell[])
            [
                d.Id, Snake(d.Kind), estimate.House.Rooms[d.Place.Room].Source.Id, PlaceWords.Room(estimate.House.Rooms[d.Place.Room]), Snake(d.Place.Mount),
                d.Place.X.AsLength().Value.ToString(), d.Place.Y.AsLength().Value.ToString(), d.Place.HeightFact.AsLength().Value.ToString(), YesNo(d.Place.Assumed), YesNo(d.OwnerSupplied),
                string.Join("; ", circuits[i].Select(b => b.Id)), string.Join("; ", circuits[i].Select(b => estimate.Wiring.Circuits[b.Circuit].Id)),
            ]));
    }

    private static string Findings(JobEstimate estimate) => Csv.Write(
        ["severity", "code", "text", "article", "edition", "verified", "where"],
        estimate.Findings.Select(f => (CsvCell[])[Snake(f.Severity), f.Code, f.Text, f.Article, f.Edition, YesNo(f.Verified), string.Join("; ", f.Where)]));

    private static string Range(JobEstimate estimate) => Csv.Write(
        ["row", "what", "share_of_cost_percent", "less_usd", "more_usd", "from_usd", "to_under_usd", "draws", "node"],
        estimate.Bid.Range.Factors.Select(f => (CsvCell[])
        [
            "factor", f.Label, Csv.Number(f.Share.Value), Csv.Number(f.Less.Value), Csv.Number(f.More.Value), "", "", "", Node(f.More.Node),
        ]).Concat(estimate.Bid.Range.Bins.Select(b => (CsvCell[])["histogram", "", "", "", "", Csv.Number(b.From), Csv.Number(b.To), Csv.Number(b.Draws), ""])));

    private static string Node(NodeRef node) => string.Create(CultureInfo.InvariantCulture, $"{node.Page}.{node.Index}");

    private static string YesNo(bool yes) => yes ? "yes" : "no";

    private static string Snake<T>(T word)
        where T : struct, Enum => System.Text.Json.JsonNamingPolicy.SnakeCaseLower.ConvertName(word.ToString());
}
