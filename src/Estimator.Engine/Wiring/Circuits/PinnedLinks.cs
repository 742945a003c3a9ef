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
        if (group.Pinned is not { } circuit)
        {
            return pins;
        }

        var boxOf = BoxIds.Of(layout, drafts);
        var unitOf = group.Units.SelectMany((u, i) => u.Select(b => (b, i))).ToDictionary(x => x.b, x => x.i);
        foreach (var run in circuit.Runs)
        {
            var from = run.From == circuit.Panel ? panel : boxOf.GetValueOrDefault(run.From, -1);
            if (from < 0 || !boxOf.TryGetValue(run.To, out var to))
            {
                continue;
            }

            pins._links.Add(Key(from, to));
            if (from == panel || unitOf.GetValueOrDefault(from, -1) != unitOf.GetValueOrDefault(to, -2))
            {
                pins._fed.Add(to);
            }
        }

        return pins;
    }

    /// <summary>The ways of pinned runs, by pair of nodes.</summary>
    internal static Dictionary<(int, int), RunWay> Ways(HouseLayout layout, ImmutableArray<DraftBox> drafts)
    {
        var boxOf = BoxIds.Of(layout, drafts);
        for (var p = 0; p < layout.Panels.Length; p++)
        {
            boxOf.TryAdd(layout.Panels[p].Source.Id, drafts.Length + p);
        }

        var ways = new Dictionary<(int, int), RunWay>();
        foreach (var run in layout.House.Job.Pins.Circuits.SelectMany(c => c.Runs))
        {
            if (run.Way is { } way && boxOf.TryGetValue(run.From, out var from) && boxOf.TryGetValue(run.To, out var to))
            {
                ways[Key(from, to)] = way;
            }
        }

        return ways;
    }

    internal bool Holds(int a, int b) => _links.Contains(Key(a, b));

    internal bool IsFed(int box) => _fed.Contains(box);

    private static (int, int) Key(int a, int b) => a < b ? (a, b) : (b, a);
}
