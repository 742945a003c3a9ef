using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Wiring.Boxes;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>The links that a pinned circuit keeps. They cost nothing while the plan is made, so every choice falls on them first.</summary>
internal sealed class PinnedLinks
{
    private readonly HashSet<(int, int)> _links = [];
    private readonly HashSet<int> _fed = [];

    /// <summary>Whether nothing is pinned.</summary>
    internal bool IsEmpty => _links.Count == 0;

    internal static PinnedLinks Of(HouseLayout layout, ImmutableArray<DraftBox> drafts, WiringGroup group, int panel)
    {
        var pins = new PinnedLinks();
        var boxOf = BoxIds.Of(layout, drafts);
        var unitOf = group.Units.SelectMany((u, i) => u.Select(b => (b, i))).ToDictionary(x => x.b, x => x.i);
        foreach (var (circuit, run) in group.Pins.SelectMany(c => c.Runs.Select(r => (c, r))))
        {
            pins.Keep(circuit, run, boxOf, unitOf, panel);
        }

        return pins;
    }

    private void Keep(PinnedCircuit circuit, PinnedRun run, Dictionary<string, int> boxOf, Dictionary<int, int> unitOf, int panel)
    {
        var from = run.From == circuit.Panel ? panel : boxOf.GetValueOrDefault(run.From, -1);
        if (from < 0 || !boxOf.TryGetValue(run.To, out var to))
        {
            return;
        }

        _links.Add(Key(from, to));
        if (from == panel || unitOf.GetValueOrDefault(from, -1) != unitOf.GetValueOrDefault(to, -2))
        {
            _fed.Add(to);
        }

        // While circuits are planned, one that leaves a common home run is fed from the panel like any other.
        if (circuit.SharesNeutralWith is not null && !circuit.Outlets.Contains(run.From) && from != panel)
        {
            _links.Add(Key(panel, to));
        }
    }

    /// <summary>The ways of pinned runs, by pair of nodes and insulated conductors; 0 stands for whichever is there.</summary>
    internal static Dictionary<(int, int, int), RunWay> Ways(HouseLayout layout, ImmutableArray<DraftBox> drafts)
    {
        var boxOf = BoxIds.Of(layout, drafts);
        for (var p = 0; p < layout.Panels.Length; p++)
        {
            boxOf.TryAdd(layout.Panels[p].Source.Id, drafts.Length + p);
        }

        var ways = new Dictionary<(int, int, int), RunWay>();
        foreach (var run in layout.House.Job.Pins.Circuits.SelectMany(c => c.Runs))
        {
            if (run.Way is { } way && boxOf.TryGetValue(run.From, out var from) && boxOf.TryGetValue(run.To, out var to))
            {
                var (low, high) = Key(from, to);
                ways[(low, high, run.Conductors ?? 0)] = way;
                ways.TryAdd((low, high, 0), way);
            }
        }

        return ways;
    }

    internal bool Holds(int a, int b) => _links.Contains(Key(a, b));

    internal bool IsFed(int box) => _fed.Contains(box);

    private static (int, int) Key(int a, int b) => a < b ? (a, b) : (b, a);
}
