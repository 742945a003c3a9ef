using Estimator.Engine.Measures;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Changes;

/// <summary>Compares two takeoffs: cable run by run, everything else room by room and circuit by circuit, so that what moves is counted as gone here and come there.</summary>
internal static class ItemChanges
{
    internal static IEnumerable<ItemChange> Between(JobEstimate before, JobEstimate after)
    {
        var (old, now) = (Places(before), Places(after));
        var order = after.Takeoff.Lines.Concat(before.Takeoff.Lines).Select(l => (l.ItemId, l.OwnerSupplied)).Distinct();
        foreach (var (item, owner) in order)
        {
            var places = old[(item, owner)].Concat(now[(item, owner)]).Select(p => p.Place).Distinct(StringComparer.Ordinal);
            var moves = places.Select(place => Sum(now, item, owner, place) - Sum(old, item, owner, place)).ToList();
            var (added, removed) = (moves.Where(m => m > 0).Sum(), -moves.Where(m => m < 0).Sum());
            if (added > 0 || removed > 0)
            {
                yield return new ItemChange(item, owner, added, removed);
            }
        }
    }

    private static decimal Sum(ILookup<(string, bool), (string Place, decimal Quantity)> quantities, string item, bool owner, string place) =>
        quantities[(item, owner)].Where(q => q.Place == place).Sum(q => q.Quantity);

    private static ILookup<(string, bool), (string Place, decimal Quantity)> Places(JobEstimate estimate)
    {
        var runs = estimate.Wiring.Runs.Select(r => (Key: (r.Cable.ItemId, false), Value: (Place: Ends(estimate, r), Quantity: r.Total.AsLength().Value.ToFeet()))).ToList();
        var cables = runs.Select(r => r.Key).ToHashSet();
        var others = estimate.Takeoff.Lines.Where(l => !cables.Contains((l.ItemId, l.OwnerSupplied)))
            .SelectMany(l => l.ByPlace.Select(p => (Key: (l.ItemId, l.OwnerSupplied), Value: (Place: p.Key, Quantity: p.Value))));
        // A cable item may serve feeders too, which are no runs of a circuit.
        var rest = estimate.Takeoff.Lines.Where(l => cables.Contains((l.ItemId, l.OwnerSupplied)))
            .Select(l => (Key: (l.ItemId, l.OwnerSupplied), Value: (Place: "feeders", Quantity: l.Quantity.Value - runs.Where(r => r.Key.ItemId == l.ItemId).Sum(r => r.Value.Quantity))));
        return runs.Concat(others).Concat(rest.Where(r => Length.FromFeet(r.Value.Quantity) != Length.Zero)).ToLookup(x => x.Key, x => x.Value);
    }

    private static string Ends(JobEstimate estimate, Run run)
    {
        string Name(int box) => box < 0 ? estimate.Layout.Panels[estimate.Wiring.Circuits[run.Circuit].Panel].Source.Id : estimate.Wiring.Boxes[box].Id;
        return $"{Name(run.From)}>{Name(run.To)} {run.Role}";
    }
}
