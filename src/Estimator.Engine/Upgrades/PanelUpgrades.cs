using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring;

namespace Estimator.Engine.Upgrades;

/// <summary>Finds the ways to give a panel room that is there already and too full for what is new, and works each of them out whole.</summary>
/// <remarks>A way that leaves a breaker without a space, or a feeder overloaded, is not offered. Source: NEC 110.3(B), 408.54 in older numbering; sizes common practice, no source.</remarks>
public static class PanelUpgrades
{
    /// <summary>The panels that are too full.</summary>
    public static IEnumerable<Panel> Full(JobEstimate estimate) => estimate.House.Job.Panels.Where(p => p.Existing && IsFull(estimate.Schedules[p.Id]));

    /// <summary>The ways for a panel, priced, the cheapest first.</summary>
    /// <param name="estimate">The job as it stands.</param>
    /// <param name="panelId">The full panel.</param>
    /// <param name="catalogue">The catalogue.</param>
    /// <param name="depth">How far the search for the wiring goes; the one of <paramref name="estimate"/>, or the prices don't compare.</param>
    public static ImmutableArray<PricedUpgrade> For(JobEstimate estimate, string panelId, PartsCatalogue catalogue, SearchDepth depth)
    {
        var job = estimate.House.Job;
        var panel = job.Panels.First(p => p.Id == panelId);
        var fresh = estimate.Wiring.Circuits.Where(c => estimate.Layout.Panels[c.Panel].Source.Id == panelId).Sum(c => c.Poles);
        ImmutableArray<PricedUpgrade?> ways =
        [
            First(estimate, Tandems(job, panel, fresh), catalogue, depth),
            First(estimate, Subpanels(job, panel, fresh), catalogue, depth),
            First(estimate, LargerPanels(job, panel, fresh), catalogue, depth),
        ];
        return [.. ways.OfType<PricedUpgrade>().OrderBy(w => w.After.Bid.Price.Value)];
    }

    private static bool IsFull(PanelSchedule schedule) => !schedule.Unplaced.IsEmpty || schedule.Breakers.Any(b => b.Half && b.Breaker.Origin is BreakerOrigin.Circuit);

    // The smallest of the sizes that leaves no breaker without a space and no feeder overloaded.
    private static PricedUpgrade? First(JobEstimate before, IEnumerable<PanelUpgrade> sizes, PartsCatalogue catalogue, SearchDepth depth)
    {
        foreach (var upgrade in sizes)
        {
            var after = JobEstimate.Compute(upgrade.Applied(before.House.Job), catalogue, depth);
            if (after.Schedules.Panels.All(s => !IsFull(s)) && after.Findings.All(f => f.Code != "feeder-load"))
            {
                return new PricedUpgrade(upgrade, after, Added(before, after));
            }
        }

        return null;
    }

    // Pairs of one rating, from the end of the directory, no more than the panel takes as tandems.
    private static IEnumerable<PanelUpgrade> Tandems(Job job, Panel panel, int fresh)
    {
        var wanted = (PanelCircuits.Halves(job, panel) + 2 * fresh - 2 * panel.Spaces + 1) / 2;
        var there = panel.Circuits.Where(c => c.Tandem || c.NewTandem).Sum(c => c.Poles);
        var pairs = panel.Circuits.Where(c => c is { Poles: 1, Tandem: false, NewTandem: false, MovedTo: null } && c.BreakerA.ToAmperes() <= UpgradeRules.TandemTo.Number())
            .Reverse().GroupBy(c => c.BreakerA).SelectMany(g => g.Chunk(2).Where(p => p.Length == 2)).ToList();
        for (var tandems = Math.Max(1, wanted); tandems <= Math.Min(pairs.Count, panel.TandemSpaces - (there + 1) / 2); tandems++)
        {
            yield return new PanelUpgrade(UpgradeKind.Tandems, panel.Id, 0, 0, [.. pairs.Take(tandems).SelectMany(p => p).Select(c => c.Id)]);
        }
    }

    private static IEnumerable<PanelUpgrade> Subpanels(Job job, Panel panel, int fresh)
    {
        if (Moved(job, panel) is not { } moved)
        {
            yield break;
        }

        foreach (var size in UpgradeRules.Subpanels.Where(s => s.Number("rating_a") <= panel.RatingA.ToAmperes() && s.Number("spaces") >= fresh + moved.Length))
        {
            yield return new PanelUpgrade(UpgradeKind.Subpanel, panel.Id, size.Number("rating_a"), (int)size.Number("spaces"), moved);
        }
    }

    private static IEnumerable<PanelUpgrade> LargerPanels(Job job, Panel panel, int fresh)
    {
        var poles = PanelCircuits.Of(job, panel).Sum(x => x.Circuit.Poles) + fresh + 2 * job.Panels.Count(p => p.FedFrom == panel.Id && !p.Existing);
        return UpgradeRules.Panels.Where(s => s.Number("rating_a") >= panel.RatingA.ToAmperes() && s.Number("spaces") >= poles)
            .Select(s => new PanelUpgrade(UpgradeKind.LargerPanel, panel.Id, s.Number("rating_a"), (int)s.Number("spaces"), []));
    }

    // The circuits that make way for the feeder's breaker, from the end of the directory; null where even that makes none.
    private static ImmutableArray<string>? Moved(Job job, Panel panel)
    {
        var candidates = panel.Circuits.Where(c => c is { Poles: 1, MovedTo: null }).Reverse().Select(c => c.Id).ToList();
        for (var count = 0; count <= Math.Min(candidates.Count, (int)UpgradeRules.MostMoved.Number()); count++)
        {
            var upgrade = new PanelUpgrade(UpgradeKind.Subpanel, panel.Id, 0, 1, [.. candidates.Take(count)]);
            if (TakesFeeder(upgrade.Applied(job), panel.Id))
            {
                return upgrade.Circuits;
            }
        }

        return null;
    }

    private static bool TakesFeeder(Job job, string panelId)
    {
        var (page, panel) = (new PageWriter(0), job.Panels.First(p => p.Id == panelId));
        var none = page.Constant("No load", 0, Unit.VoltAmperes);
        List<BreakerLoad> breakers = [.. PanelCircuits.Of(job, panel).Select(x => new BreakerLoad(x.Circuit.Id, "", BreakerOrigin.Existing, 0, x.Circuit.Poles, none, x.Circuit.Space, x.Circuit.Tandem || x.Circuit.NewTandem))];
        breakers.AddRange(job.Panels.Where(p => p.FedFrom == panelId && !p.Existing).Select(p => new BreakerLoad(p.Id, "", BreakerOrigin.Feeder, 0, 2, none)));
        return PanelArranging.Arrange(page, panelId, panel.Spaces, panel.TandemSpaces, breakers).Unplaced.IsEmpty;
    }

    private static ImmutableArray<AddedPart> Added(JobEstimate before, JobEstimate after)
    {
        var old = before.Takeoff.Lines.Where(l => !l.OwnerSupplied).ToDictionary(l => l.ItemId, l => l.Quantity.Value, StringComparer.Ordinal);
        var now = after.Takeoff.Lines.Where(l => !l.OwnerSupplied).ToList();
        var gone = before.Takeoff.Lines.Where(l => !l.OwnerSupplied && now.All(n => n.ItemId != l.ItemId)).Select(l => new AddedPart(l.ItemId, l.Description, l.Unit, -l.Quantity.Value));
        return [.. now.Select(l => new AddedPart(l.ItemId, l.Description, l.Unit, l.Quantity.Value - old.GetValueOrDefault(l.ItemId))).Where(p => p.Quantity != 0), .. gone];
    }
}
