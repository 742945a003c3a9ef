using System.Collections.Immutable;
using Estimator.Engine.Wiring.Joints;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>The cables inside a unit of controls with one switch box that is fed at a load: a switch loop goes to the switches and brings the switched conductors back.</summary>
/// <remarks>
/// Only with one switch box: with more, hot and switched conductor would go out and come back in different cables, which 300.3(B) bars, or ask for cables of four conductors.
/// The neutral goes along to the switches where 404.2(C) asks for one, where a switch needs one to work, or where other loads hang on the switch box.
/// </remarks>
internal sealed class LightFedIsland
{
    private const int MostInCable = 3;

    private readonly ControlBoxes _boxes;
    private readonly Func<int, int, long> _cost;
    private readonly List<CableLeg> _legs = [];

    private LightFedIsland(ControlBoxes boxes, int entry, ImmutableArray<Net> loop, Func<int, int, long> cost)
    {
        (_boxes, _cost, Entry) = (boxes, cost, entry);
        var neutral = loop.Contains(Net.Neutral);
        _legs.Add(new CableLeg(entry, Switch, RunRole.SwitchLoop, loop));
        foreach (var loads in boxes.LoadsByControls())
        {
            var root = loads.Contains(entry) ? entry : Switch;
            Hang(root, loads);
        }

        Exports = [entry, .. neutral ? [Switch] : ImmutableArray<int>.Empty, .. boxes.Loads.Where(b => b != entry && boxes.NeedsHot(b))];
    }

    /// <summary>The load box that the feed enters.</summary>
    internal int Entry { get; }

    /// <summary>Boxes with an unswitched hot and a neutral.</summary>
    internal ImmutableArray<int> Exports { get; }

    /// <summary>The cables, the switch loop first.</summary>
    internal ImmutableArray<CableLeg> Legs => [.. _legs];

    private int Switch => _boxes.Switches[0];

    /// <summary>The island that is fed at a load box; null where the loop would ask for more conductors than a cable has.</summary>
    /// <param name="boxes">The boxes of the unit, one of them with switches.</param>
    /// <param name="entry">The load box.</param>
    /// <param name="neutralAsked">Whether a neutral must reach the switches.</param>
    /// <param name="cost">Cost of a cable between two boxes.</param>
    internal static LightFedIsland? At(ControlBoxes boxes, int entry, bool neutralAsked, Func<int, int, long> cost)
    {
        var acting = boxes.ActingOn(entry);
        var others = boxes.LoadsByControls().Length > 1;
        ImmutableArray<Net> loop = [Net.Hot, .. acting.Select(Net.Switched), .. neutralAsked || others ? [Net.Neutral] : ImmutableArray<Net>.Empty];
        return acting.IsEmpty || loop.Length > MostInCable ? null : new LightFedIsland(boxes, entry, loop, cost);
    }

    // Loads under the controls of the fed one hang on it, others on the switch box, one leg from there.
    private void Hang(int root, ImmutableArray<int> loads)
    {
        List<Net> nets = [.. _boxes.ActingOn(loads[0]).Select(Net.Switched), Net.Neutral];
        if (loads.Any(b => b != root && _boxes.NeedsHot(b)))
        {
            nets.Insert(0, Net.Hot);
        }

        var first = root == Switch ? loads.MinBy(l => _cost(root, l)) : root;
        var edges = SpanningTree.From(first, loads, _cost, b => b == Entry ? _boxes.Room(b) - 1 : _boxes.Room(b));
        foreach (var (from, to) in root == Switch ? edges.Insert(0, (root, first)) : edges)
        {
            // One neutral and at most two other conductors go in one cable; a second cable to the same box lends its white to nothing.
            foreach (var (pair, i) in nets.Where(n => n != Net.Neutral).Chunk(2).Select((p, i) => (p, i)))
            {
                _legs.Add(new CableLeg(from, to, RunRole.SwitchedLeg, [.. pair, i == 0 ? Net.Neutral : Net.Spare]));
            }
        }
    }
}
