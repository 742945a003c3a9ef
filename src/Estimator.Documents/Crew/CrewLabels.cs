using System.Collections.Immutable;
using System.Globalization;
using Estimator.Documents.House;
using Estimator.Engine;
using Estimator.Engine.Panels;
using Estimator.Engine.Wiring.Circuits;

namespace Estimator.Documents.Crew;

/// <summary>What is written on cables and boxes: a circuit by its space in the panel, a box by its circuit and its place in the chain, so 12.3 is the third box of the circuit in space 12.</summary>
/// <remarks>With several panels the panel's id stands in front. Source: common practice, no source.</remarks>
public sealed class CrewLabels
{
    private readonly JobEstimate _estimate;
    private readonly ImmutableArray<string> _circuits;
    private readonly Dictionary<int, string> _boxes;

    /// <summary>The labels of a job.</summary>
    /// <param name="estimate">The estimate.</param>
    public CrewLabels(JobEstimate estimate)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        _estimate = estimate;
        _circuits = [.. estimate.Wiring.Circuits.Select(Number)];
        _boxes = estimate.Wiring.Circuits.SelectMany((c, i) => c.Boxes.Select((b, place) => (Box: b, Label: string.Create(CultureInfo.InvariantCulture, $"{_circuits[i]}.{place + 1}"))))
            .DistinctBy(x => x.Box).ToDictionary(x => x.Box, x => x.Label);
    }

    /// <summary>Circuits in the order of their labels: panel by panel, space by space.</summary>
    public IEnumerable<int> InOrder => Enumerable.Range(0, _circuits.Length).OrderBy(c => _estimate.Wiring.Circuits[c].Panel).ThenBy(c => FirstSpace(_estimate.Wiring.Circuits[c])).ThenBy(c => _circuits[c], StringComparer.Ordinal);

    /// <summary>The label of a circuit.</summary>
    public string Circuit(int circuit) => _circuits[circuit];

    /// <summary>The label of a box.</summary>
    public string Box(int box) => _boxes[box];

    /// <summary>A box in full, or the panel where a run leaves it.</summary>
    /// <param name="box">Index of the box; -1 for the panel.</param>
    /// <param name="circuit">Index of the circuit.</param>
    public string End(int box, int circuit) => box < 0 ? PlaceWords.Panel(_estimate, _estimate.Wiring.Circuits[circuit].Panel) : $"{Box(box)} {PlaceWords.Box(_estimate, box)}";

    private string Number(Circuit circuit, int index)
    {
        var panel = _estimate.Layout.Panels[circuit.Panel].Source.Id;
        var prefix = _estimate.Layout.Panels.Length > 1 ? $"{panel}-" : "";
        if (Placed(circuit) is not { } placed)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{prefix}new {index + 1}");
        }

        var spaces = circuit.SharesNeutralWith is null ? placed.Spaces : [circuit.LeavesCommonHomeRun ? placed.Spaces[^1] : placed.Spaces[0]];
        var number = string.Join('/', spaces.Select(s => s.ToString(CultureInfo.InvariantCulture)));
        return $"{prefix}{number}{(placed.Half ? Half(panel, placed) : "")}";
    }

    // Two halves of a tandem stand in one space.
    private string Half(string panel, ScheduledBreaker placed) =>
        _estimate.Schedules[panel].Breakers.Where(b => b.Half && b.Spaces[0] == placed.Spaces[0]).TakeWhile(b => b != placed).Any() ? "B" : "A";

    private ScheduledBreaker? Placed(Circuit circuit)
    {
        var breaker = _estimate.Wiring.BreakerOf(circuit).Id;
        return _estimate.Schedules[_estimate.Layout.Panels[circuit.Panel].Source.Id].Breakers.FirstOrDefault(b => b.Breaker.Id == breaker);
    }

    private int FirstSpace(Circuit circuit) => Placed(circuit) is { } placed ? circuit.LeavesCommonHomeRun ? placed.Spaces[^1] : placed.Spaces[0] : int.MaxValue;
}
