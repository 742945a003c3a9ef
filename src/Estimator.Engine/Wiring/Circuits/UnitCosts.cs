using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Planning costs inside a group; a pinned link costs nothing, so that every choice falls on it first.</summary>
/// <param name="job">Its wiring method.</param>
/// <param name="ways">Costs of ways.</param>
/// <param name="pins">Links that are kept.</param>
/// <param name="panel">The panel's node.</param>
/// <param name="wire">Size of the conductors.</param>
/// <param name="conductors">Insulated conductors of the feed.</param>
internal sealed class UnitCosts(Job job, WayCosts ways, PinnedLinks pins, int panel, WireSize wire, int conductors)
{
    private readonly CableType _feed = FeedCable.Of(job, wire, conductors);

    /// <summary>The panel's node.</summary>
    internal int Panel => panel;

    /// <summary>Cost of a feeding cable.</summary>
    internal long Feed(int from, int to) => pins.Holds(from, to) ? 0 : ways.Best(from, to, _feed).CostE4;

    /// <summary>Cost of a cable between two boxes while a unit is made; a box that a pin feeds is as good as at the panel.</summary>
    internal long Between(int from, int to) => from == panel && pins.IsFed(to) ? 0 : Feed(from, to);

    /// <summary>Cost of a cable inside a unit.</summary>
    internal long Of(CableLeg leg) => pins.Holds(leg.From, leg.To) ? 0 : ways.Best(leg.From, leg.To, FeedCable.Of(job, wire, leg.Nets.Length)).CostE4;

    /// <summary>Whether a pin feeds the box.</summary>
    internal bool IsPinned(int box) => pins.IsFed(box);

    /// <summary>The ways that keep the most of what is pinned.</summary>
    internal ImmutableArray<WiringUnit> NearestToPins(ImmutableArray<WiringUnit> units)
    {
        if (pins.IsEmpty)
        {
            return units;
        }

        var most = units.Max(Kept);
        return [.. units.Where(u => Kept(u) == most)];
    }

    private int Kept(WiringUnit unit) => unit.Legs.Count(l => pins.Holds(l.From, l.To)) + (pins.IsFed(unit.Entry) ? 1 : 0);
}
