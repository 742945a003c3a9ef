using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Labor;
using Estimator.Engine.Layout;
using Estimator.Engine.Purchase;
using Estimator.Engine.Takeoff;

namespace Estimator.Engine.Pricing;

/// <summary>Composes what the price takes in, leaves out and rests on from the job and its unknowns; what the user changed stands instead.</summary>
/// <remarks>Source: common practice, no source.</remarks>
internal static class BidScope
{
    internal static ImmutableArray<ScopeLine> Of(HouseLayout layout, TakeoffResult takeoff, PurchasePlan purchase, LaborPlan labor)
    {
        ImmutableArray<ScopeLine> composed =
        [
            .. Lines(ScopePart.Included, Included(layout, takeoff, labor)),
            .. Lines(ScopePart.Excluded, Excluded(layout, takeoff, purchase)),
            .. Lines(ScopePart.Assumed, BidAssumptions.Of(layout)),
        ];
        var edits = layout.House.Job.Bid.Scope;
        var known = composed.Select(l => l.Id).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. composed.Select(l => edits.FirstOrDefault(e => e.Id == l.Id) is { } edit ? l with { Text = edit.Text } : l),
            .. edits.Where(e => !known.Contains(e.Id) && e.Text.Length > 0).Select(e => new ScopeLine(e.Id, e.Part, e.Text, null)),
        ];
    }

    private static IEnumerable<ScopeLine> Lines(ScopePart part, IEnumerable<(string Id, string Text)> lines) => lines.Select(l => new ScopeLine(l.Id, part, l.Text, l.Text));

    private static IEnumerable<(string Id, string Text)> Included(HouseLayout layout, TakeoffResult takeoff, LaborPlan labor)
    {
        var rooms = layout.Devices.Select(d => d.Place.Room).Distinct().Count();
        return
        [
            ("in/openings", $"Wiring of {takeoff.Openings.Value:0} {(takeoff.Openings.Value == 1 ? "opening" : "openings")} in {rooms} {(rooms == 1 ? "room" : "rooms")} under {EditionWords(layout.House.Job.Code.Edition)} and the local amendments stated."),
            ("in/material", "Cable, boxes, devices and plates, breakers, connectors and fasteners as listed."),
            ("in/connection", "Connection of the equipment named, tests, panel directory, permit and two inspections."),
            .. Panels(layout.House.Job),
            .. Service(layout.House.Job, labor),
            .. OwnerSupplied(takeoff),
            .. layout.House.Job.Bid.Allowances.Select(a => ($"in/allowance-{a.Id}", $"An allowance of {Dollars(a.Amount.ToDollars())} for {a.Text}; the difference is settled when it is chosen.")),
        ];
    }

    private static IEnumerable<(string Id, string Text)> Panels(Job job)
    {
        foreach (var panel in job.Panels.Where(p => p is { Existing: false, FedFrom: not null }))
        {
            yield return ($"in/panel-{panel.Id}", FormattableString.Invariant($"Panel {panel.Called()}, {panel.RatingA.ToAmperes():0} A with {panel.Spaces} spaces, its feeder and breaker."));
        }

        var landed = job.Panels.Sum(p => PanelCircuits.Of(job, p).Count(x => x.Landed));
        if (landed > 0)
        {
            yield return ("in/landed", FormattableString.Invariant($"{landed} circuits that are there already, landed in a new panel with breakers of their own."));
        }
    }

    private static IEnumerable<(string Id, string Text)> Service(Job job, LaborPlan labor)
    {
        if (job.Service is { } service && labor.WaitDays is { } days)
        {
            yield return ("in/service", FormattableString.Invariant(
                $"Service of {ServiceRating(job, service):0} A, {(service.Entrance is ServiceEntrance.Overhead ? "overhead" : "underground")}: meter base, conductors, disconnect, grounding electrodes and bonding, work with the utility."));
            yield return ("in/utility", FormattableString.Invariant($"The utility disconnects and connects, which may take {days.Value:0} days on the calendar; no hours are charged for them. Only the utility makes the service conductors dead."));
        }
    }

    private static IEnumerable<(string Id, string Text)> OwnerSupplied(TakeoffResult takeoff)
    {
        List<string> lines = [.. takeoff.Lines.Where(l => l.OwnerSupplied).Select(l => FormattableString.Invariant($"{l.Quantity.Value:0} {l.Description}"))];
        if (lines.Count > 0)
        {
            yield return ("in/owner", $"Installed by us, supplied by the owner: {string.Join(", ", lines)}.");
        }
    }

    private static decimal ServiceRating(Job job, ServiceWork service) => (service.RatingA ?? job.Panels.First(p => p.FedFrom is null).RatingA).ToAmperes();

    private static IEnumerable<(string Id, string Text)> Excluded(HouseLayout layout, TakeoffResult takeoff, PurchasePlan purchase)
    {
        var job = layout.House.Job;
        ImmutableArray<(string, string)> always =
        [
            ("out/patching", job.Buildings.IsEmpty && job.Service?.Trench is null ? "Patching, painting, trenching, and charges of the utility." : "Patching, painting, trenching through rock, paving or planting, and charges of the utility."),
            ("out/equipment", takeoff.Lines.Any(l => l.OwnerSupplied) ? "Equipment and appliances themselves, low-voltage wiring, and what the owner supplies: its price, its faults, its delay." : "Equipment and appliances themselves, low-voltage wiring, and anything the owner supplies."),
            ("out/hidden", "Hidden defects, and removal of hazardous material."),
        ];
        return
        [
            .. purchase.NotPriced.Select(x => ($"out/price-{x}", $"No price yet, so not in this bid: {x}.")),
            .. always,
            .. job.Unknowns.Select(u => ($"out/unknown-{u.Id}", $"Not known yet: {(u.Text.Length > 0 ? u.Text : u.Topic.ToString())}{(u.Allowance is null ? "" : " (an allowance is in the price)")}.")),
            .. job.Panels.Any(p => p.Existing && p.Make is null) ? [("out/make", "Another make or series of breakers than assumed: the panel's make is not stated.")] : Array.Empty<(string, string)>(),
        ];
    }

    private static string EditionWords(CodeEdition edition) => $"NEC {(int)edition}";

    private static string Dollars(decimal amount) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"${amount:#,##0.##}");
}
