using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.Layout;
using Estimator.Engine.Panels;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Circuits;
using Estimator.Engine.Wiring.Joints;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring;

/// <summary>Numbers the circuits, runs and boxes of all groups and adds up the planning cost.</summary>
internal sealed class PlanAssembly(HouseLayout layout, ImmutableArray<DraftBox> drafts, WayCosts costs)
{
    private readonly List<Circuit> _circuits = [];
    private readonly List<Run> _runs = [];
    private readonly List<Box> _boxes = [];
    private readonly List<Finding> _findings = [];
    private readonly List<ExplanationPage> _pages = [];
    private readonly Dictionary<int, int> _boxNumber = [];
    private readonly Dictionary<(int Panel, CircuitKind Kind), int> _numbers = [];
    private long _costE4;

    internal void Add(SolvedGroup group)
    {
        _pages.Add(group.Page);
        _findings.AddRange(group.Findings);
        var pins = group.Group.Pins.ToList();
        foreach (var (circuit, i) in group.Circuits.Select((c, i) => (c, i)))
        {
            Add(group.Group, circuit, pins.Count > 0 ? pins[i].Id : NextId(group.Group));
        }
    }

    internal WiringPlan ToPlan() => new()
    {
        Circuits = [.. _circuits],
        Runs = [.. _runs],
        Boxes = [.. _boxes],
        Findings = [.. _findings],
        PlanningCostE4 = _costE4,
        Pages = [.. _pages],
    };

    private void Add(WiringGroup group, SolvedCircuit solved, string id)
    {
        var number = _circuits.Count;
        var (firstBox, firstRun) = (_boxes.Count, _runs.Count);
        for (var i = 0; i < solved.Boxes.Length; i++)
        {
            _boxNumber[solved.Tree.Boxes[i]] = firstBox + i;
            _boxes.Add(solved.Boxes[i] with { Circuit = number, Joints = [.. solved.Boxes[i].Joints.Select(j => Numbered(j, firstRun))] });
        }

        _runs.AddRange(solved.Runs.Select(r => r with
        {
            Id = $"{id}/{r.Id}",
            Circuit = number,
            From = r.From < 0 ? -1 : _boxNumber[r.From],
            To = _boxNumber[r.To],
        }));
        _costE4 += solved.CostE4(layout.House.Job, costs);
        _circuits.Add(ToCircuit(group, solved, id, firstBox, firstRun));
    }

    private Circuit ToCircuit(WiringGroup group, SolvedCircuit solved, string id, int firstBox, int firstRun) => new()
    {
        Id = id,
        Name = CircuitNames.Of(layout, drafts, solved.Draft, solved.Tree.Boxes),
        Panel = group.Panel,
        Kind = group.Kind,
        BreakerA = solved.Draft.Rating.BreakerA,
        Poles = solved.Draft.Rating.Poles,
        SharesNeutralWith = solved.Draft.Shared is { } shared ? _circuits.Count + (shared.JoinedAt is null ? 1 : -1) : null,
        LeavesCommonHomeRun = solved.Draft.Shared?.JoinedAt is not null,
        Protection = solved.Draft.Protection,
        FirstReceptacleProtects = solved.Draft.GroundFault is ProtectedBy.First,
        Wire = solved.Wire,
        Boxes = [.. Enumerable.Range(firstBox, solved.Boxes.Length)],
        Runs = [.. Enumerable.Range(firstRun, solved.Runs.Length)],
        PanelEnds = [.. solved.Runs.SelectMany((r, i) => r.From < 0 ? AtPanel(r, firstRun + i) : [])],
        Outlets = solved.Draft.Units.Sum(u => u.Outlets),
        LoadVa = solved.LoadVa,
        VoltageDropPercent = solved.DropPercent,
        Pinned = group.Pinned is not null,
    };

    private static Joint Numbered(Joint joint, int firstRun) => joint with { Ends = [.. joint.Ends.Select(e => e with { Run = firstRun + e.Run })] };

    private static IEnumerable<PanelEnd> AtPanel(Run homeRun, int number) => homeRun.Conductors.Select(c => new PanelEnd(number, c.Colour, c.Net.Function switch
    {
        ConductorFunction.Hot when c.Net == Net.SecondHot => PanelTerminal.SecondPole,
        ConductorFunction.Hot => PanelTerminal.Breaker,
        ConductorFunction.Neutral => PanelTerminal.Neutral,
        ConductorFunction.Ground => PanelTerminal.Ground,
        _ => throw new InvalidOperationException($"A home run carries no {c.Net.Function} conductor."),
    }));

    private string NextId(WiringGroup group)
    {
        string id;
        do
        {
            var key = (group.Panel, group.Kind);
            var number = _numbers[key] = _numbers.GetValueOrDefault(key) + 1;
            id = $"{layout.Panels[group.Panel].Source.Id}/{Word(group.Kind)}-{number}";
        }
        while (layout.House.Job.Pins.Circuits.Any(c => c.Id == id));
        return id;
    }

    private static string Word(CircuitKind kind) => kind switch
    {
        CircuitKind.SmallAppliance => "small-appliance",
        _ => kind.ToString().ToLowerInvariant(),
    };
}
