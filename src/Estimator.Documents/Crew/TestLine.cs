using System.Globalization;
using Estimator.Engine;
using Estimator.Engine.House;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Circuits;

namespace Estimator.Documents.Crew;

/// <summary>A test with the value that is expected and a blank for what was found.</summary>
/// <param name="On">Label of the circuit, or the panel.</param>
/// <param name="Name">What the circuit or panel is called.</param>
/// <param name="Test">What is done.</param>
/// <param name="Live">Whether it is done with the power on.</param>
/// <param name="Expected">What is expected.</param>
/// <param name="Basis">On what that rests.</param>
public sealed record TestLine(string On, string Name, string Test, bool Live, string Expected, string Basis)
{
    /// <summary>The tests of a job: panels first, then circuit by circuit, dead before live.</summary>
    public static IEnumerable<TestLine> Of(JobEstimate estimate, CrewLabels labels)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        ArgumentNullException.ThrowIfNull(labels);
        return estimate.House.Job.Panels.SelectMany(p => Panel(p)).Concat(labels.InOrder.SelectMany(c => Circuit(estimate, labels, c)));
    }

    private static IEnumerable<TestLine> Panel(Panel panel) => Rows("panel")
        .Where(r => r.Text("needs") == "every" || panel is { FedFrom: not null, Existing: false })
        .Select(r => Line(panel.Id, panel.Called(), r, t => t));

    private static IEnumerable<TestLine> Circuit(JobEstimate estimate, CrewLabels labels, int index)
    {
        var circuit = estimate.Wiring.Circuits[index];
        var needs = Needs(estimate, circuit).ToHashSet(StringComparer.Ordinal);
        var path = GroundPath.Of(estimate.Wiring, circuit);
        string Filled(string text) => text
            .Replace("{amps}", circuit.BreakerA.Value.ToString("0", CultureInfo.InvariantCulture), StringComparison.Ordinal)
            .Replace("{wire}", circuit.Wire.ToString(), StringComparison.Ordinal)
            .Replace("{far}", path is null ? "the farthest box" : $"box {labels.Box(path.FarthestBox)}", StringComparison.Ordinal)
            .Replace("{ground_ohms}", path?.Ohms.ToString("0.00", CultureInfo.InvariantCulture) ?? "", StringComparison.Ordinal)
            .Replace("{drop}", circuit.VoltageDropPercent.Value.ToString("0.0", CultureInfo.InvariantCulture), StringComparison.Ordinal);
        return Rows("circuit").Where(r => needs.Contains(r.Text("needs"))).Select(r => Line(labels.Circuit(index), circuit.Name, r, Filled));
    }

    private static IEnumerable<RuleRow> Rows(string on) => CrewTable.Tests.Rows.Where(r => r.Text("on") == on).OrderBy(r => r.Text("when") == "live");

    private static TestLine Line(string on, string name, RuleRow row, Func<string, string> filled) =>
        new(on, name, filled(row.Label), row.Text("when") == "live", filled(row.Text("expect")), CrewTable.Basis(row));

    private static IEnumerable<string> Needs(JobEstimate estimate, Circuit circuit)
    {
        var boxes = circuit.Boxes.Select(b => estimate.Wiring.Boxes[b]).ToList();
        var kinds = boxes.SelectMany(b => b.Devices).Select(d => estimate.Layout.Devices[d].Kind).ToHashSet();
        (string Need, bool Is)[] needs =
        [
            ("every", true),
            ("line_to_neutral", circuit.Poles == 1),
            ("two_hots", circuit.Poles == 2),
            ("drop", circuit.VoltageDropPercent.Value > 0),
            ("receptacles", kinds.Any(k => k.IsReceptacle())),
            ("switches", kinds.Any(k => k.IsSwitch())),
            ("ground_fault", circuit.Protection is Protection.GroundFault or Protection.DualFunction || circuit.FirstReceptacleProtects || kinds.Contains(DeviceKind.GfciReceptacle) || boxes.Any(b => b.OwnGroundFault)),
            ("arc_fault", circuit.Protection is Protection.ArcFault or Protection.DualFunction),
            ("multiwire", circuit.SharesNeutralWith is not null),
            ("alarms", kinds.Any(k => k.IsAlarm())),
        ];
        return needs.Where(n => n.Is).Select(n => n.Need);
    }
}
