using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Labor;
using Estimator.Engine.Layout;
using Estimator.Engine.Purchase;
using Estimator.Engine.Takeoff;

namespace Estimator.Engine.Pricing;

/// <summary>Composes what the price takes in and leaves out from the job and its unknowns.</summary>
/// <remarks>Source: common practice, no source.</remarks>
internal static class BidScope
{
    internal static ImmutableArray<string> Inclusions(HouseLayout layout, TakeoffResult takeoff, LaborPlan labor)
    {
        var rooms = layout.Devices.Select(d => d.Place.Room).Distinct().Count();
        return
        [
            $"Wiring of {takeoff.Openings.Value:0} openings in {rooms} rooms under {EditionWords(layout.House.Job.Code.Edition)} and the local amendments stated.",
            "Cable, boxes, devices and plates, breakers, connectors and fasteners as listed.",
            "Connection of the equipment named, tests, panel directory, permit and two inspections.",
            .. Panels(layout.House.Job),
            .. Service(layout.House.Job, labor),
        ];
    }

    private static IEnumerable<string> Panels(Job job)
    {
        foreach (var panel in job.Panels.Where(p => p is { Existing: false, FedFrom: not null }))
        {
            yield return FormattableString.Invariant($"Panel {panel.Called()}, {panel.RatingA.ToAmperes():0} A with {panel.Spaces} spaces, its feeder and breaker.");
        }

        var landed = job.Panels.Sum(p => PanelCircuits.Of(job, p).Count(x => x.Landed));
        if (landed > 0)
        {
            yield return FormattableString.Invariant($"{landed} circuits that are there already, landed in a new panel with breakers of their own.");
        }
    }

    private static IEnumerable<string> Service(Job job, LaborPlan labor)
    {
        if (job.Service is { } service && labor.WaitDays is { } days)
        {
            yield return FormattableString.Invariant(
                $"Service of {ServiceRating(job, service):0} A, {(service.Entrance is ServiceEntrance.Overhead ? "overhead" : "underground")}: meter base, conductors, disconnect, grounding electrodes and bonding, work with the utility.");
            yield return FormattableString.Invariant($"The utility disconnects and connects, which may take {days.Value:0} days on the calendar; no hours are charged for them. Only the utility makes the service conductors dead.");
        }
    }

    private static decimal ServiceRating(Job job, ServiceWork service) => (service.RatingA ?? job.Panels.First(p => p.FedFrom is null).RatingA).ToAmperes();

    internal static ImmutableArray<string> Exclusions(HouseLayout layout, PurchasePlan purchase)
    {
        var job = layout.House.Job;
        ImmutableArray<string> always =
        [
            job.Buildings.IsEmpty && job.Service?.Trench is null ? "Patching, painting, trenching, and charges of the utility." : "Patching, painting, trenching through rock, paving or planting, and charges of the utility.",
            "Equipment and appliances themselves, low-voltage wiring, and anything the owner supplies.",
            "Hidden defects, and removal of hazardous material.",
        ];
        return
        [
            .. purchase.NotPriced.Select(x => $"No price yet, so not in this bid: {x}."),
            .. always,
            .. job.Unknowns.Select(u => $"Not known yet: {(u.Text.Length > 0 ? u.Text : u.Topic.ToString())}{(u.Allowance is null ? "" : " (an allowance is in the price)")}."),
            .. job.Panels.Any(p => p.Existing && p.Make is null) ? ["Another make or series of breakers than assumed: the panel's make is not stated."] : Array.Empty<string>(),
        ];
    }

    private static string EditionWords(CodeEdition edition) => $"NEC {(int)edition}";
}
