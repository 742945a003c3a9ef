using Estimator.Engine.Wiring.Circuits;
using Estimator.Engine.Wiring.Joints;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Tests.Wiring.Simulation;

/// <summary>
/// A circuit as an electrician with a meter sees it: conductors by colour, what is joined in each box, screws by name. Nothing here reads what the engine
/// says a conductor is for.
/// </summary>
internal sealed class TracedCircuit
{
    private readonly Dictionary<string, int> _points = [];
    private readonly List<(int A, int B)> _fixed = [];
    private readonly Dictionary<int, List<TerminalName>> _screws = [];

    internal TracedCircuit(Circuit circuit, Func<int, Run> runs, Func<int, IReadOnlyList<Joint>> joints)
    {
        Boxes = [.. circuit.Boxes];
        foreach (var (run, r) in circuit.Runs.Select(r => (runs(r), r)))
        {
            foreach (var conductor in run.Conductors)
            {
                _fixed.Add((Point($"{run.From}/{r}/{conductor.Colour}"), Point($"{run.To}/{r}/{conductor.Colour}")));
            }
        }

        foreach (var end in circuit.PanelEnds)
        {
            _fixed.Add((Point($"-1/{end.Run}/{end.Colour}"), Point($"panel/{end.Terminal}")));
        }

        foreach (var box in circuit.Boxes)
        {
            foreach (var joint in joints(box))
            {
                var members = joint.Ends.Select(e => Point($"{box}/{e.Run}/{e.Colour}")).Concat(joint.Terminals.Select(t => Screw(box, t))).ToList();
                _fixed.AddRange(members.Skip(1).Select(m => (members[0], m)));
            }
        }
    }

    internal IReadOnlyList<int> Boxes { get; }

    /// <summary>What is connected to what while switches stand so: 0 or 1 by device.</summary>
    internal CircuitState With(Func<int, int> position)
    {
        var root = Enumerable.Range(0, _points.Count).ToArray();
        foreach (var (a, b) in _fixed.Concat(_screws.SelectMany(s => Inside(s.Key, s.Value, position(s.Key)))))
        {
            root[Find(root, a)] = Find(root, b);
        }

        return new CircuitState(name => _points.TryGetValue(name, out var p) ? Find(root, p) : -1);
    }

    // The contacts of a device, from its screws alone.
    private IEnumerable<(int A, int B)> Inside(int device, List<TerminalName> screws, int position)
    {
        int At(TerminalName name) => Point($"device/{device}/{name}");
        if (screws.Contains(TerminalName.SwitchFeed))
        {
            return position == 1 ? [(At(TerminalName.SwitchFeed), At(TerminalName.SwitchLeg))] : [];
        }

        if (screws.Contains(TerminalName.Common))
        {
            return [(At(TerminalName.Common), At(position == 1 ? TerminalName.TravellerA : TerminalName.TravellerB))];
        }

        if (screws.Contains(TerminalName.OnwardA))
        {
            return position == 1
                ? [(At(TerminalName.TravellerA), At(TerminalName.OnwardA)), (At(TerminalName.TravellerB), At(TerminalName.OnwardB))]
                : [(At(TerminalName.TravellerA), At(TerminalName.OnwardB)), (At(TerminalName.TravellerB), At(TerminalName.OnwardA))];
        }

        return screws.Where(s => s is TerminalName.LoadHot or TerminalName.LoadNeutral)
            .Select(s => (At(s), At(s is TerminalName.LoadHot ? TerminalName.Hot : TerminalName.Neutral)));
    }

    private int Screw(int box, Terminal terminal)
    {
        var name = terminal.Device < 0 ? $"equipment/{box}/{terminal.Name}" : $"device/{terminal.Device}/{terminal.Name}";
        if (terminal.Device >= 0)
        {
            if (!_screws.TryGetValue(terminal.Device, out var screws))
            {
                _screws.Add(terminal.Device, screws = []);
                foreach (var screw in Enum.GetValues<TerminalName>())
                {
                    Point($"device/{terminal.Device}/{screw}");
                }
            }

            screws.Add(terminal.Name);
        }

        return Point(name);
    }

    private int Point(string name)
    {
        if (!_points.TryGetValue(name, out var point))
        {
            _points.Add(name, point = _points.Count);
        }

        return point;
    }

    private static int Find(int[] root, int point)
    {
        while (root[point] != point)
        {
            point = root[point] = root[root[point]];
        }

        return point;
    }
}
