using System.Collections.Immutable;
using Estimator.Engine.Measures;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Joints;

/// <summary>Finds which conductors of a box are joined, and to what.</summary>
/// <remarks>
/// A lone conductor goes straight to its screw; a device whose conductor runs on, or that comes with wire leads, is spliced with a pigtail or its lead.
/// A receptacle whose ground-fault protection covers what it feeds takes the feed on its line screws and the rest on its load screws.
/// Source: common practice, no source.
/// </remarks>
/// <param name="box">The box.</param>
/// <param name="size">Size of its conductors.</param>
/// <param name="origins">By control, the box where the neutral that goes along with it leaves the common one.</param>
internal sealed class Joining(int box, WireSize size, ImmutableSortedDictionary<int, int> origins)
{
    private readonly List<(Net Net, bool Load, ConductorEnd End)> _ends = [];
    private readonly List<(Net Net, bool Load, Terminal Terminal)> _terminals = [];

    /// <summary>The joints of the box.</summary>
    /// <param name="legs">The cables of the circuit.</param>
    /// <param name="terminals">What stands in the box.</param>
    /// <param name="handsOn">Whether its receptacle protects what it feeds.</param>
    internal ImmutableArray<Joint> Of(ImmutableArray<CableLeg> legs, ImmutableArray<Terminal> terminals, bool handsOn)
    {
        for (var i = 0; i < legs.Length; i++)
        {
            if (legs[i].From == box || legs[i].To == box)
            {
                // The other circuit of a multiwire pair leaves ahead of what this one's first receptacle protects.
                Enter(legs[i], i, handsOn && legs[i].From == box && !legs[i].Nets.Contains(Net.SecondHot));
            }
        }

        foreach (var terminal in terminals)
        {
            _terminals.Add((Here(terminal.Net), false, terminal));
            if (handsOn && OnLoadSide(terminal.Name) is { } name && _ends.Any(e => e.Load && e.Net == Here(terminal.Net)))
            {
                _terminals.Add((Here(terminal.Net), true, terminal with { Name = name }));
            }
        }

        var keys = _ends.Select(e => (e.Net, e.Load)).Concat(_terminals.Select(t => (t.Net, t.Load))).Distinct()
            .OrderBy(k => k.Net.Function).ThenBy(k => k.Net.Control).ThenBy(k => k.Net.Number).ThenBy(k => k.Load);
        return [.. keys.SelectMany(k => Joined(k.Net, k.Load))];
    }

    private void Enter(CableLeg leg, int index, bool load)
    {
        foreach (var conductor in CableColours.Of(leg.Nets))
        {
            var parted = load && conductor.Net.Function is (ConductorFunction.Hot or ConductorFunction.Neutral);
            _ends.Add((Here(conductor.Net), parted, new ConductorEnd(index, conductor.Colour)));
        }
    }

    private IEnumerable<Joint> Joined(Net net, bool load)
    {
        ImmutableArray<ConductorEnd> ends = [.. _ends.Where(e => e.Net == net && e.Load == load).Select(e => e.End)];
        if (net.Function is ConductorFunction.Spare)
        {
            return ends.Select(e => new Joint(net.Function, size, [e], [], Connector: true));
        }

        ImmutableArray<Terminal> terminals = [.. _terminals.Where(t => t.Net == net && t.Load == load).Select(t => t.Terminal)];
        var connector = ends.Length > 0
            && (terminals.IsEmpty || terminals.Any(t => t.Lead) || ends.Length + terminals.Length > 2);
        return [new Joint(net.Function, size, ends, terminals, connector)];
    }

    private Net Here(Net net) => net.Function is ConductorFunction.Neutral && origins.TryGetValue(net.Control, out var origin) && origin == box ? Net.Neutral : net;

    private static TerminalName? OnLoadSide(TerminalName name) => name switch
    {
        TerminalName.Hot => TerminalName.LoadHot,
        TerminalName.Neutral => TerminalName.LoadNeutral,
        _ => null,
    };
}
