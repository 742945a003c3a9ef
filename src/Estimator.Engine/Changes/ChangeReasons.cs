using System.Collections.Immutable;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Circuits;

namespace Estimator.Engine.Changes;

/// <summary>Says why a change is more than the unit price of what was asked for.</summary>
internal static class ChangeReasons
{
    internal static ImmutableArray<string> Of(JobEstimate before, JobEstimate after)
    {
        var (old, now) = (before.Wiring.Circuits.ToDictionary(c => c.Id, StringComparer.Ordinal), after.Wiring.Circuits.ToDictionary(c => c.Id, StringComparer.Ordinal));
        return
        [
            .. now.Values.Where(c => !old.ContainsKey(c.Id)).Select(c => FormattableString.Invariant($"A new circuit of {c.BreakerA.Value:0} A, {c.Name}, with its breaker and its home run.")),
            .. old.Values.Where(c => !now.ContainsKey(c.Id)).Select(c => $"The circuit {c.Name} is given up."),
            .. now.Values.Where(c => old.TryGetValue(c.Id, out var was) && (was.Protection != c.Protection || was.BreakerA.Value != c.BreakerA.Value)).Select(c => $"The breaker of {c.Name} is exchanged for another kind."),
            .. now.Values.Where(c => old.TryGetValue(c.Id, out var was) && was.Wire != c.Wire).Select(c => $"{c.Name} takes {c.Wire} AWG instead of {old[c.Id].Wire}."),
            .. FartherCircuits(before, after, old),
            .. Boxes(before, after),
            .. Panels(before, after),
        ];
    }

    // What comes hangs on another circuit than the nearest where that one has its outlets already; the way to the other is longer than one hop.
    private static IEnumerable<string> FartherCircuits(JobEstimate before, JobEstimate after, Dictionary<string, Circuit> old)
    {
        var were = before.Wiring.Boxes.Select(b => b.Id).ToHashSet(StringComparer.Ordinal);
        List<(Circuit Full, Circuit Taken, int Room)> led = [];
        foreach (var come in after.Wiring.Boxes.Where(b => !were.Contains(b.Id)))
        {
            var taken = after.Wiring.Circuits[come.Circuit];
            if (!old.TryGetValue(taken.Id, out var sold))
            {
                continue;
            }

            var nearest = before.Wiring.Circuits.Where(c => c.Kind == sold.Kind && c.Panel == sold.Panel).MinBy(c => (Away(before, c, come), c.Id != sold.Id));
            if (nearest is not null && nearest.Id != sold.Id && !CircuitRoom.Holds(before.House.Job, nearest.Kind, nearest.BreakerA.Value, nearest.Outlets + 1, decimal.ToInt32(nearest.LoadVa.Value)))
            {
                led.Add((nearest, taken, come.Place.Room));
            }
        }

        return led.DistinctBy(l => (l.Full.Id, l.Taken.Id, l.Room)).Select(l => $"The nearest circuit in {after.House.Rooms[l.Room].Source.Name}, {l.Full.Name}, has as many outlets as a circuit is given, so {l.Taken.Name} is led there.");
    }

    // On another level it is farther than on this one, whatever the plan shows.
    private static (int Levels, int Plan) Away(JobEstimate estimate, Circuit circuit, Box from) => circuit.Boxes.Select(b => estimate.Wiring.Boxes[b].Place)
        .Select(p => (Math.Abs(p.Level - from.Place.Level), p.Spot.SquareDistanceTo(from.Place.Spot))).DefaultIfEmpty((int.MaxValue, 0)).Min();

    private static IEnumerable<string> Boxes(JobEstimate before, JobEstimate after)
    {
        var was = before.Wiring.Boxes.Where(b => b.Item is not null).ToLookup(b => b.Id, StringComparer.Ordinal);
        var exchanged = after.Wiring.Boxes.Count(b => b.Item is { } item && was[b.Id].FirstOrDefault() is { Item: { } old } && old.ItemId != item.ItemId);
        if (exchanged > 0)
        {
            yield return exchanged == 1 ? "A box that was planned gives way to another, for more cables or devices in it." : $"{exchanged} boxes that were planned give way to others, for more cables or devices in them.";
        }
    }

    private static IEnumerable<string> Panels(JobEstimate before, JobEstimate after)
    {
        var was = before.House.Job.Panels.ToDictionary(p => p.Id, StringComparer.Ordinal);
        return after.House.Job.Panels.Where(p => !p.Existing && (!was.TryGetValue(p.Id, out var old) || old.Existing || old.RatingA != p.RatingA || old.Spaces != p.Spaces))
            .Select(p => FormattableString.Invariant($"A panel of {p.RatingA.ToAmperes():0} A with {p.Spaces} spaces."));
    }
}
