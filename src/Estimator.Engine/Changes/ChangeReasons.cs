using System.Collections.Immutable;

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
            .. Boxes(before, after),
            .. Panels(before, after),
        ];
    }

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
