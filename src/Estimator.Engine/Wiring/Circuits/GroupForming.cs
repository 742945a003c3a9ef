using System.Collections.Immutable;
using Estimator.Engine.Controls;
using Estimator.Engine.Layout;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Cuts the work into groups that stand still: panel, kind of circuit, need of ground-fault protection, zone.</summary>
internal static class GroupForming
{
    internal static ImmutableArray<WiringGroup> Form(HouseLayout layout, ControlPlan controls, ImmutableArray<DraftBox> drafts, WayCosts costs)
    {
        var units = UnitForming.Form(layout, controls, drafts);
        var zones = Zones.Of(layout.House);
        var pinned = PinnedGroups(layout, drafts, units);
        var taken = pinned.SelectMany(p => p.Units).SelectMany(u => u).ToHashSet();
        var free = units.Where(u => !taken.Contains(u[0]))
            .Select(u => (Boxes: u, Key: KeyOf(layout, drafts, u, zones, costs)))
            .GroupBy(u => u.Key)
            .OrderBy(g => g.Key.Panel).ThenBy(g => g.Key.Kind).ThenBy(g => g.Key.Zone).ThenBy(g => g.Key.GroundFault).ThenBy(g => g.Key.Alone)
            .Select(g => new WiringGroup(g.Key.Panel, g.Key.Kind, g.Key.GroundFault, g.Key.Zone, [.. g.Select(u => u.Boxes)], Pinned: null));
        return [.. pinned, .. free];
    }

    private static (int Panel, CircuitKind Kind, bool GroundFault, int Zone, int Alone) KeyOf(
        HouseLayout layout, ImmutableArray<DraftBox> drafts, ImmutableArray<int> boxes, ImmutableArray<int> zones, WayCosts costs)
    {
        var kind = CircuitKinds.Of(layout, drafts, boxes);
        var zoned = kind is CircuitKind.Lighting or CircuitKind.Receptacles or CircuitKind.General;
        return (
            NearestPanel(layout, boxes[0], costs),
            kind,
            boxes.Any(b => ProtectionNeeds.GroundFault(layout, drafts[b])),
            zoned ? zones[drafts[boxes[0]].Place.Room] : -1,
            kind is CircuitKind.Individual ? boxes[0] : -1);
    }

    private static int NearestPanel(HouseLayout layout, int box, WayCosts costs) =>
        Enumerable.Range(0, layout.Panels.Length).MinBy(p => costs.Best(costs.PanelNode(p), box, FeedCable.Reference).CostE4);

    private static ImmutableArray<WiringGroup> PinnedGroups(HouseLayout layout, ImmutableArray<DraftBox> drafts, ImmutableArray<ImmutableArray<int>> units)
    {
        var unitOf = units.SelectMany(u => u.Select(b => (b, u))).ToDictionary(x => x.b, x => x.u);
        var boxOf = BoxIds.Of(layout, drafts);
        var taken = new HashSet<int>();
        var groups = ImmutableArray.CreateBuilder<WiringGroup>();
        foreach (var pin in layout.House.Job.Pins.Circuits)
        {
            ImmutableArray<ImmutableArray<int>> members = [.. pin.Outlets.Where(boxOf.ContainsKey).Select(o => unitOf[boxOf[o]])
                .DistinctBy(u => u[0]).Where(u => taken.Add(u[0])).OrderBy(u => u[0])];
            if (members.IsEmpty)
            {
                continue;
            }

            var panel = layout.Panels.Select((p, i) => (p, i)).Where(x => x.p.Source.Id == pin.Panel).Select(x => x.i).FirstOrDefault();
            var kind = members.Select(u => CircuitKinds.Of(layout, drafts, u)).Min();
            groups.Add(new WiringGroup(panel, kind, members.Any(u => u.Any(b => ProtectionNeeds.GroundFault(layout, drafts[b]))), -1, members, pin));
        }

        return groups.ToImmutable();
    }
}
