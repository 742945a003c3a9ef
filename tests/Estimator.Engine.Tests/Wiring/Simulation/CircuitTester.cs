using Estimator.Engine.Controls;
using Estimator.Engine.House;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Circuits;
using Estimator.Engine.Wiring.Joints;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Tests.Wiring.Simulation;

/// <summary>Turns every switch of a circuit and says what does not light as it should, or is hot where it must not be.</summary>
internal sealed class CircuitTester
{
    private readonly JobEstimate _estimate;
    private readonly Circuit _circuit;
    private readonly IReadOnlyList<Joint>[] _joints;
    private readonly TracedCircuit _traced;
    private readonly HashSet<int> _devices;
    private readonly HashSet<int> _others;

    internal CircuitTester(JobEstimate estimate, Circuit circuit, Func<Box, IReadOnlyList<Joint>>? joints = null)
    {
        // A multiwire circuit is tested whole: what leaves the common home run is hot on the breaker's other pole.
        _others = circuit.SharesNeutralWith is { } other ? [.. estimate.Wiring.Circuits[other].Boxes] : [];
        circuit = circuit.SharesNeutralWith is { } second && estimate.Wiring.Circuits[second] is var partner
            ? circuit with { Boxes = [.. circuit.Boxes, .. partner.Boxes], Runs = [.. circuit.Runs, .. partner.Runs] } : circuit;
        (_estimate, _circuit) = (estimate, circuit);
        _joints = [.. circuit.Boxes.Select(b => joints?.Invoke(estimate.Wiring.Boxes[b]) ?? estimate.Wiring.Boxes[b].Joints)];
        _traced = new TracedCircuit(circuit, Run, b => _joints[circuit.Boxes.IndexOf(b)]);
        _devices = [.. circuit.Boxes.SelectMany(b => estimate.Wiring.Boxes[b].Devices)];
    }

    internal IEnumerable<string> Problems() => Ends().Concat(Colours()).Concat(Neutrals()).Concat(Always()).Concat(
        _estimate.Controls.Groups.Where(g => g.Switches.Any(_devices.Contains) && !g.Loads.IsEmpty && Buildable(g)).SelectMany(Turned)).Select(p => $"{_circuit.Id}: {p}");

    private Run Run(int run) => _estimate.Wiring.Runs[run];

    private bool Buildable(ControlGroup group) => group.Switches.Length == 1
        || (group.Switches.Count(s => Kind(s) is DeviceKind.ThreeWaySwitch) == 2 && group.Switches.Count(s => Kind(s) is DeviceKind.FourWaySwitch) == group.Switches.Length - 2);

    private DeviceKind Kind(int device) => _estimate.Layout.Devices[device].Kind;

    // Every position of the control's own switches, the others at rest and then all turned: the loads change with each single turn and with nothing else.
    private IEnumerable<string> Turned(ControlGroup group)
    {
        var n = group.Switches.Length;
        foreach (var others in (int[])[0, 1])
        {
            var lit = new bool[1 << n];
            for (var positions = 0; positions < 1 << n; positions++)
            {
                var state = _traced.With(d => group.Switches.IndexOf(d) is >= 0 and var i ? positions >> i & 1 : others);
                var states = group.Loads.SelectMany(Points).Select(p => state.Meets(p, PoleOf(group))).Distinct().ToList();
                if (states.Count != 1 || !state.Apart())
                {
                    yield return $"{group.Id}: at {positions:b} its loads differ, or hot, neutral and ground meet";
                    yield break;
                }

                lit[positions] = states[0];
            }

            if (n == 1 && Kind(group.Switches[0]) is not (DeviceKind.ThreeWaySwitch or DeviceKind.FourWaySwitch) && (lit[0] || !lit[1]))
            {
                yield return $"{group.Id}: open {lit[0]}, closed {lit[1]}";
            }

            if (Enumerable.Range(0, 1 << n).Any(p => Enumerable.Range(0, n).Any(i => lit[p] == lit[p ^ (1 << i)])))
            {
                yield return $"{group.Id}: a switch turns nothing";
            }
        }
    }

    // Whatever the switches do: outlets without a control are hot, every neutral and ground is one with the panel's, nothing meets that must not.
    private IEnumerable<string> Always()
    {
        var controlled = _estimate.Controls.Groups.Where(g => !g.Switches.IsEmpty).SelectMany(g => g.Loads).SelectMany(Points).ToHashSet();
        foreach (var position in (int[])[0, 1])
        {
            var state = _traced.With(_ => position);
            if (!state.Apart())
            {
                yield return "hot, neutral and ground meet";
            }

            foreach (var (box, b) in _circuit.Boxes.Select((b, i) => (b, i)))
            {
                foreach (var problem in _joints[b].SelectMany(j => j.Terminals).Select(t => Wrong(state, box, t, controlled)).OfType<string>())
                {
                    yield return problem;
                }
            }
        }
    }

    private string? Wrong(CircuitState state, int box, Terminal terminal, HashSet<string> controlled)
    {
        var point = terminal.Device < 0 ? $"equipment/{box}/{terminal.Name}" : $"device/{terminal.Device}/{terminal.Name}";
        PanelTerminal? wanted = terminal.Name switch
        {
            TerminalName.Neutral or TerminalName.LoadNeutral => PanelTerminal.Neutral,
            TerminalName.Ground => PanelTerminal.Ground,
            TerminalName.SecondHot => PanelTerminal.SecondPole,
            TerminalName.Hot or TerminalName.FanLight or TerminalName.SwitchedHalf or TerminalName.LoadHot when !controlled.Contains(point) => _others.Contains(box) ? PanelTerminal.SecondPole : PanelTerminal.Breaker,
            _ => null,
        };
        return wanted is { } meets && !state.Meets(point, meets) ? $"{point} does not meet {meets}" : null;
    }

    private PanelTerminal PoleOf(ControlGroup group) =>
        _others.Any(b => _estimate.Wiring.Boxes[b].Devices.Contains(group.Switches[0])) ? PanelTerminal.SecondPole : PanelTerminal.Breaker;

    private IEnumerable<string> Points(ControlledLoad load) => (Kind(load.Device), load.Part) switch
    {
        (DeviceKind.CeilingFan, LoadPart.Whole) => [$"device/{load.Device}/{TerminalName.Hot}", $"device/{load.Device}/{TerminalName.FanLight}"],
        (DeviceKind.CeilingFan, LoadPart.Light) => [$"device/{load.Device}/{TerminalName.FanLight}"],
        (DeviceKind.HalfHotReceptacle, _) => [$"device/{load.Device}/{TerminalName.SwitchedHalf}"],
        _ => [$"device/{load.Device}/{TerminalName.Hot}"],
    };

    // Each conductor ends in one joint of each box that it enters.
    private IEnumerable<string> Ends()
    {
        for (var b = 0; b < _circuit.Boxes.Length; b++)
        {
            var box = _circuit.Boxes[b];
            var wanted = _circuit.Runs.Where(r => Run(r).From == box || Run(r).To == box).SelectMany(r => Run(r).Conductors.Select(c => new ConductorEnd(r, c.Colour))).ToList();
            var found = _joints[b].SelectMany(j => j.Ends).ToList();
            if (found.Count != wanted.Count || !found.ToHashSet().SetEquals(wanted))
            {
                yield return $"{_estimate.Wiring.Boxes[box].Id}: conductors that end nowhere or twice";
            }
        }
    }

    // White is a neutral, spare, or marked again; bare joins nothing but bare.
    private IEnumerable<string> Colours()
    {
        foreach (var (run, r) in _circuit.Runs.Select(r => (Run(r), r)))
        {
            var colours = run.Conductors.Select(c => c.Colour).ToList();
            if (colours.Distinct().Count() != colours.Count || colours.Count != run.Cable.Conductors + 1 || colours.Count(c => c is InsulationColour.Bare) != 1)
            {
                yield return $"{run.Id}: colours {string.Join(' ', colours)} in a cable of {run.Cable.Conductors}";
            }
        }

        foreach (var joint in _joints.SelectMany(j => j))
        {
            var bare = joint.Ends.Count(e => e.Colour is InsulationColour.Bare);
            if (bare != 0 && bare != joint.Ends.Length)
            {
                yield return "a bare conductor meets an insulated one";
            }

            if (joint.Ends.Where(e => e.Colour is InsulationColour.White).Any(e => !Run(e.Run).Conductors.First(c => c.Colour is InsulationColour.White).ReMarked)
                && joint.Terminals.Any(t => t.Name is not (TerminalName.Neutral or TerminalName.LoadNeutral)))
            {
                yield return "a white conductor that is not marked again meets another screw than a neutral one";
            }
        }
    }

    // Conductors thinner than 1/0 may not run in parallel, NEC 310.10(G): neutrals close no loop.
    private IEnumerable<string> Neutrals()
    {
        var root = new Dictionary<string, string>();
        string Find(string x) => root.TryGetValue(x, out var up) && up != x ? Find(up) : x;
        var jointOf = new Dictionary<(int Box, ConductorEnd End), string>();
        for (var b = 0; b < _circuit.Boxes.Length; b++)
        {
            foreach (var (joint, j) in _joints[b].Select((x, j) => (x, j)))
            {
                foreach (var end in joint.Ends)
                {
                    jointOf[(_circuit.Boxes[b], end)] = $"{_circuit.Boxes[b]}/{j}";
                }
            }
        }

        foreach (var (run, r) in _circuit.Runs.Select(r => (Run(r), r)))
        {
            foreach (var white in run.Conductors.Where(c => c.Colour is InsulationColour.White && !c.ReMarked))
            {
                var end = new ConductorEnd(r, white.Colour);
                var (from, to) = (run.From < 0 ? "panel" : jointOf.GetValueOrDefault((run.From, end), $"{r}/from"), jointOf.GetValueOrDefault((run.To, end), $"{r}/to"));
                if (Find(from) == Find(to))
                {
                    yield return $"{run.Id}: its neutral runs in parallel with another";
                }

                root[Find(from)] = Find(to);
            }
        }
    }
}
