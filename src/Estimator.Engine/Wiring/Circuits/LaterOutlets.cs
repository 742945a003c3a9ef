using System.Collections.Immutable;
using Estimator.Engine.Layout;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Puts outlets that came after circuits were frozen on the nearest of them that takes more: what is in the wall stays, and a circuit goes on from one of its boxes.</summary>
/// <remarks>
/// A circuit takes what is of its kind, from its panel, in its building, as far as breaker and practice go; one whose outlets have the ground-fault protection that
/// a new one needs comes first. What fits nowhere makes a circuit of its own.
/// </remarks>
internal sealed class LaterOutlets(HouseLayout layout, ImmutableArray<DraftBox> drafts, WayCosts costs, ImmutableArray<WiringGroup> groups)
{
    private readonly List<WiringGroup> _groups = [.. groups];

    /// <summary>The groups with what joined them.</summary>
    internal ImmutableArray<WiringGroup> Groups => [.. _groups];

    /// <summary>Puts a unit on a circuit if one takes it.</summary>
    internal bool Join(ImmutableArray<int> unit, int panel, CircuitKind kind)
    {
        var needs = unit.Any(NeedsGroundFault);
        var found = _groups.Select((g, i) => (Group: g, Index: i)).Where(x => Takes(x.Group, unit, panel, kind)).Select(x => (x.Index, CostE4: Nearest(x.Group, unit), Without: needs && !x.Group.Units.Any(u => u.Any(NeedsGroundFault))))
            .OrderBy(x => (x.Without, x.CostE4, x.Index)).Select(x => (int?)x.Index).FirstOrDefault();
        if (found is not { } best)
        {
            return false;
        }

        _groups[best] = _groups[best] with { Units = [.. _groups[best].Units, unit] };
        return true;
    }

    private bool Takes(WiringGroup group, ImmutableArray<int> unit, int panel, CircuitKind kind)
    {
        if (group.Pinned is not { TakesMore: true } pin || group.Joining is not null || kind is CircuitKind.Individual || group.Kind != kind || group.Panel != panel || Building(group.Units[0][0]) != Building(unit[0]))
        {
            return false;
        }

        List<DraftBox> boxes = [.. group.Units.Append(unit).SelectMany(u => u).Select(b => drafts[b])];
        var breaker = pin.BreakerA?.ToAmperes() ?? CircuitRatings.For(kind).Number();
        return CircuitRoom.Holds(layout.House.Job, kind, breaker, boxes.Sum(b => BoxOutlets.Count(layout, b)), boxes.Sum(b => BoxOutlets.LoadVa(layout, b)));
    }

    private long Nearest(WiringGroup group, ImmutableArray<int> unit) =>
        group.Units.SelectMany(u => u).Min(from => unit.Min(to => costs.Best(from, to, FeedCable.Reference).CostE4));

    private bool NeedsGroundFault(int box) => ProtectionNeeds.GroundFault(layout, drafts[box]);

    private int Building(int box) => layout.House.BuildingOf(drafts[box].Place.Room);
}
