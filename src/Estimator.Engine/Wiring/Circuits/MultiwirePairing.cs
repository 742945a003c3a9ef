using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Panels;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Chooses circuits of a group that share a breaker of two poles, a home run of three conductors and its neutral, two by two.</summary>
/// <remarks>
/// The second leaves in the first box of the first; beyond it each has a neutral of its own, so that taking a device out never opens the common one. Where two
/// home runs cost no more on the planning costs, circuits stay alone; the pair that saves the most comes first. Source: NEC 210.4(A) and (B), 300.13(B).
/// </remarks>
internal sealed class MultiwirePairing(Job job, WayCosts costs)
{
    /// <summary>Pairs of circuits by index: the one with the home run, and the one that leaves it.</summary>
    internal ImmutableArray<(int Carries, int Joins)> Pairs(WiringGroup group, ImmutableArray<SolvedCircuit> circuits)
    {
        if (group.Joining is not null && circuits.Length == 2)
        {
            return [(0, 1)];
        }

        if (!Wanted(group) || circuits.Length < 2)
        {
            return [];
        }

        var found = Enumerable.Range(0, circuits.Length).SelectMany(a => Enumerable.Range(0, circuits.Length).Where(b => a != b && Alike(circuits[a], circuits[b]))
            .Select(b => (Carries: a, Joins: b, SavesE4: Saved(circuits[a], circuits[b])))).Where(p => p.SavesE4 > 0)
            .OrderByDescending(p => p.SavesE4).ThenBy(p => p.Carries).ThenBy(p => p.Joins);
        var taken = new HashSet<int>();
        var pairs = ImmutableArray.CreateBuilder<(int, int)>();
        foreach (var (carries, joins, _) in found)
        {
            if (!taken.Contains(carries) && !taken.Contains(joins))
            {
                taken.UnionWith([carries, joins]);
                pairs.Add((carries, joins));
            }
        }

        return pairs.ToImmutable();
    }

    private bool Wanted(WiringGroup group) => group.Pinned is null && group.Kind is not CircuitKind.Individual && job.Practice.Multiwire switch
    {
        MultiwireUse.SmallAppliance => group.Kind is CircuitKind.SmallAppliance,
        MultiwireUse.Every => true,
        MultiwireUse.None or null => false,
        _ => throw new InvalidOperationException($"{job.Practice.Multiwire} pairs no circuits."),
    };

    private static bool Alike(SolvedCircuit a, SolvedCircuit b) => OneHomeRun(a) && OneHomeRun(b)
        && a.Draft.Rating.Poles == 1 && b.Draft.Rating.Poles == 1 && a.Wire == b.Wire && a.Draft.Rating.BreakerA.Value == b.Draft.Rating.BreakerA.Value && a.Draft.Protection == b.Draft.Protection;

    private static bool OneHomeRun(SolvedCircuit circuit) => circuit.Tree.Legs.Count(l => l.Role is RunRole.HomeRun) == 1;

    private long Saved(SolvedCircuit a, SolvedCircuit b)
    {
        var panel = costs.PanelNode(a.Draft.Group.Panel);
        var (first, second) = (a.Tree.Boxes[0], b.Tree.Boxes[0]);
        var (two, three) = (FeedCable.Of(job, a.Wire, 2), FeedCable.Of(job, a.Wire, 3));
        var apart = costs.Best(panel, first, two).CostE4 + costs.Best(panel, second, two).CostE4 + costs.Prices.PanelEntryE4 + 2 * costs.Prices.BreakerE4(1, a.Draft.Protection);
        var together = costs.Best(panel, first, three).CostE4 + costs.Best(first, second, two).CostE4 + costs.Prices.BreakerE4(2, a.Draft.Protection);
        return apart - together;
    }
}
