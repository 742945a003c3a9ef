using System.Collections.Immutable;
using Estimator.Engine.Controls;
using Estimator.Engine.Layout;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Cuts the work into groups that stand still: panel, kind of circuit, need of ground-fault protection, building and zone.</summary>
/// <remarks>A building that stands apart and has a panel is fed from that panel, since one supply is all that may lead to it. Source: NEC 225.30.</remarks>
internal static class GroupForming
{
    internal static ImmutableArray<WiringGroup> Form(HouseLayout layout, ControlPlan controls, ImmutableArray<DraftBox> drafts, WayCosts costs)
    {
        var units = UnitForming.Form(layout, controls, drafts);
        var zones = Zones.Of(layout.House);
        var pinned = PinnedGroups.Of(layout, drafts, units);
        var taken = pinned.SelectMany(p => p.Units).SelectMany(u => u).ToHashSet();
        var later = new List<(ImmutableArray<int> Boxes, GroupKey Key)>();
        var joining = new LaterOutlets(layout, drafts, costs, pinned);
        foreach (var unit in units.Where(u => !taken.Contains(u[0])))
        {
            var key = KeyOf(layout, drafts, unit, zones, costs);
            if (!joining.Join(unit, key.Panel, key.Kind))
            {
                later.Add((unit, key));
            }
        }

        pinned = joining.Groups;
        var keyed = later;
        var few = keyed.Where(u => u.Key.GroundFault).GroupBy(u => u.Key).Where(g => EachProtectsItself(layout, drafts, [.. g.Select(u => u.Boxes)])).Select(g => g.Key).ToHashSet();
        var free = keyed.Select(u => few.Contains(u.Key) ? (u.Boxes, Key: u.Key with { GroundFault = false }) : u)
            .GroupBy(u => u.Key)
            .OrderBy(g => g.Key.Panel).ThenBy(g => g.Key.Kind).ThenBy(g => g.Key.Zone).ThenBy(g => g.Key.Building).ThenBy(g => g.Key.GroundFault).ThenBy(g => g.Key.Alone)
            .Select(g => new WiringGroup(g.Key.Panel, g.Key.Kind, g.Key.Zone, [.. g.Select(u => u.Boxes)], Pinned: null));
        return [.. pinned, .. free];
    }

    private static GroupKey KeyOf(
        HouseLayout layout, ImmutableArray<DraftBox> drafts, ImmutableArray<int> boxes, ImmutableArray<int> zones, WayCosts costs)
    {
        var kind = CircuitKinds.Of(layout, drafts, boxes);
        var zoned = kind is CircuitKind.Lighting or CircuitKind.Receptacles or CircuitKind.General;
        return new GroupKey(
            NearestPanel(layout, drafts[boxes[0]].Place.Room, boxes[0], costs),
            kind,
            zoned && NeedsGroundFault(layout, drafts, boxes),
            zoned ? zones[drafts[boxes[0]].Place.Room] : -1,
            layout.House.BuildingOf(drafts[boxes[0]].Place.Room),
            kind is CircuitKind.Individual ? boxes[0] : -1);
    }

    // A few receptacles that need it each take a ground-fault device of their own and stay with their neighbours.
    private static bool EachProtectsItself(HouseLayout layout, ImmutableArray<DraftBox> drafts, ImmutableArray<ImmutableArray<int>> units) =>
        units.Length <= WiringSettings.OwnGroundFaultMost.Number() && units.All(u => u.Length == 1 && ProtectionNeeds.TakesGroundFaultReceptacle(layout, drafts[u[0]]));

    private static bool NeedsGroundFault(HouseLayout layout, ImmutableArray<DraftBox> drafts, ImmutableArray<int> boxes) =>
        boxes.Any(b => ProtectionNeeds.GroundFault(layout, drafts[b]));

    private static int NearestPanel(HouseLayout layout, int room, int box, WayCosts costs)
    {
        var open = PanelsOpen(layout).ToList();
        var there = open.Where(p => layout.House.BuildingOf(layout.Panels[p].Place.Room) == layout.House.BuildingOf(room)).ToList();
        return (there.Count > 0 ? there : open).MinBy(p => costs.Best(costs.PanelNode(p), box, FeedCable.Reference).CostE4);
    }

    // Panels that take new circuits; all of them where none does.
    private static IEnumerable<int> PanelsOpen(HouseLayout layout) =>
        Enumerable.Range(0, layout.Panels.Length).Where(p => !layout.Panels[p].Source.NoNewCircuits || layout.Panels.All(x => x.Source.NoNewCircuits));

    private sealed record GroupKey(int Panel, CircuitKind Kind, bool GroundFault, int Zone, int Building, int Alone);
}
