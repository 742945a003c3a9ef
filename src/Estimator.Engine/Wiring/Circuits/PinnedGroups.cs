using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Wiring.Boxes;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Makes a group of each pinned circuit, and one of two that share a home run and its neutral.</summary>
internal static class PinnedGroups
{
    internal static ImmutableArray<WiringGroup> Of(HouseLayout layout, ImmutableArray<DraftBox> drafts, ImmutableArray<ImmutableArray<int>> units)
    {
        var unitOf = units.SelectMany(u => u.Select(b => (b, u))).ToDictionary(x => x.b, x => x.u);
        var boxOf = BoxIds.Of(layout, drafts);
        var taken = new HashSet<int>();
        ImmutableArray<ImmutableArray<int>> Members(PinnedCircuit pin) => [.. pin.Outlets.Where(boxOf.ContainsKey).Select(o => unitOf[boxOf[o]])
            .DistinctBy(u => u[0]).Where(u => taken.Add(u[0])).OrderBy(u => u[0])];
        var pins = layout.House.Job.Pins.Circuits.Select(p => (Pin: p, Members: Members(p))).Where(x => !x.Members.IsEmpty).ToList();
        var joining = pins.Where(x => pins.Any(o => o.Pin.Id == x.Pin.SharesNeutralWith)).ToDictionary(x => x.Pin.SharesNeutralWith!, StringComparer.Ordinal);
        var groups = ImmutableArray.CreateBuilder<WiringGroup>();
        foreach (var (pin, members) in pins.Where(x => !joining.Values.Any(j => j.Pin.Id == x.Pin.Id)))
        {
            var panel = layout.Panels.Select((p, i) => (p, i)).Where(x => x.p.Source.Id == pin.Panel).Select(x => x.i).FirstOrDefault();
            var kind = members.Select(u => CircuitKinds.Of(layout, drafts, u)).Min();
            groups.Add(joining.TryGetValue(pin.Id, out var other)
                ? new WiringGroup(panel, kind, -1, [.. members, .. other.Members], pin) { Joining = other.Pin, Carried = members.Length }
                : new WiringGroup(panel, kind, -1, members, pin));
        }

        return groups.ToImmutable();
    }
}
