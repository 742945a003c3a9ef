using System.Collections.Immutable;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Feeds the units of a circuit from the panel: grown from box to box, or a run of its own to each, whichever costs less.</summary>
/// <param name="units">All units of the group, each in its ways.</param>
/// <param name="panel">The panel's node.</param>
/// <param name="cost">Cost of feeding a box from a node.</param>
/// <param name="panelEntryE4">Cost of a cable's entry into the panel.</param>
internal sealed class FeedGrowing(
    ImmutableArray<ImmutableArray<WiringUnit>> units, int panel, Func<int, int, long> cost, long panelEntryE4)
{
    private readonly ImmutableArray<ImmutableArray<WiringUnit>> _firstWays = [.. units.Select(u => u[..1])];

    /// <summary>The feed of a circuit.</summary>
    /// <param name="members">Its units.</param>
    /// <param name="first">The unit that must be fed from the panel and alone, in its first way; -1 where any may and several can.</param>
    internal FeedTree Grow(IReadOnlyList<int> members, int first)
    {
        var best = Growth(units, members, first);
        // What is nearest first is not always cheapest in the end, so the first ways alone are tried besides.
        if (members.Any(u => units[u].Length > 1) && Growth(_firstWays, members, first) is var plain && plain.CostE4 < best.CostE4)
        {
            best = plain;
        }

        // Boxes that are nearly full can make the grown feed dearer than a run of its own from the panel to each unit; then those runs are taken.
        return first < 0 && Star(members) is var star && star.CostE4 < best.CostE4 ? star : best;
    }

    private FeedTree Growth(ImmutableArray<ImmutableArray<WiringUnit>> ways, IReadOnlyList<int> members, int first) =>
        new FeedGrowth(ways, panel, cost, panelEntryE4).Grow(members, first);

    private FeedTree Star(IReadOnlyList<int> members)
    {
        var growth = new FeedGrowth(units, panel, cost, panelEntryE4);
        var links = members.Select(u => (Unit: u, Feed: growth.FromPanel(u))).ToList();
        return new([.. links.Select(l => new FeedLink(panel, l.Unit, l.Feed.Way))], links.Sum(l => l.Feed.Cost));
    }
}
