using System.Globalization;
using Estimator.Documents.Boxes;
using Estimator.Documents.Crew;
using Estimator.Engine;
using Estimator.Engine.Explanations;

namespace Estimator.Documents.Tables;

/// <summary>What a crew works by, as CSV.</summary>
internal static class CrewTables
{
    internal static string PullList(JobEstimate estimate) => Csv.Write(
        ["run", "circuit", "circuit_name", "from", "to", "cable", "length", "length_ft", "carries", "way", "node"],
        PulledRun.Of(estimate, new CrewLabels(estimate)).Select(r => (CsvCell[])[r.Run, r.Circuit, r.Name, r.From, r.To, r.Cable, r.Length.ToString(), Csv.Number(r.Length.ToFeet()), r.Carries, r.Way, Node(r.Node)]));

    internal static string Boxes(JobEstimate estimate) => Csv.Write(
        ["label", "box", "circuit", "serves", "item", "gangs", "volume_in3", "needed_in3", "fits", "cables", "splices", "node"],
        MadeUpBox.Of(estimate, new CrewLabels(estimate)).Select(b => (CsvCell[])
        [
            b.Label, estimate.Wiring.Boxes[b.Index].Id, b.Circuit, b.Serves, b.Item, Csv.Number(b.Gangs), b.VolumeIn3 is { } volume ? Csv.Number(volume) : "", Csv.Number(b.NeededIn3),
            b.Fits ? "yes" : "no", Csv.Number(b.Cables), Csv.Number(b.Splices), Node(estimate.Wiring.Boxes[b.Index].RequiredVolume.Node),
        ]));

    /// <summary>A row a joint of each box: what it carries, which conductors and which screws meet in it.</summary>
    internal static string BoxContents(JobEstimate estimate)
    {
        var labels = new CrewLabels(estimate);
        return Csv.Write(
            ["label", "box", "joint", "carries", "wire_awg", "connector", "conductors", "cables", "terminals"],
            MadeUpBox.Of(estimate, labels).SelectMany(b => estimate.Wiring.Boxes[b.Index].Joints.Select((joint, i) => (CsvCell[])
            [
                b.Label, estimate.Wiring.Boxes[b.Index].Id, Csv.Number(i + 1), BoxWords.Function(joint.Function), joint.Size.ToString(), joint.Connector ? "yes" : "no", Csv.Number(joint.Conductors),
                string.Join("; ", joint.Ends.Select(e => $"{e.Colour.ToString().ToLowerInvariant()} of {estimate.Wiring.Runs[e.Run].Id}")),
                string.Join("; ", joint.Terminals.Select(t => $"{BoxWords.Terminal(t)} of {BoxWords.Device(estimate, estimate.Wiring.Boxes[b.Index], t.Device)}")),
            ])));
    }

    internal static string Kit(JobEstimate estimate) => Csv.Write(
        ["kind", "item", "count", "unit", "because_of", "basis"],
        KitLine.Of(estimate).Select(l => (CsvCell[])[l.Consumable ? "consumable" : "tool", l.Name, Csv.Number(l.Count), l.Unit, l.Because, l.Basis]));

    internal static string Tests(JobEstimate estimate) => Csv.Write(
        ["circuit_or_panel", "name", "test", "power", "expected", "found", "basis"],
        TestLine.Of(estimate, new CrewLabels(estimate)).Select(t => (CsvCell[])[t.On, t.Name, t.Test, t.Live ? "on" : "off", t.Expected, "", t.Basis]));

    private static string Node(NodeRef node) => string.Create(CultureInfo.InvariantCulture, $"{node.Page}.{node.Index}");
}
