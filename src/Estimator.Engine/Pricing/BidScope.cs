using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Purchase;
using Estimator.Engine.Takeoff;

namespace Estimator.Engine.Pricing;

/// <summary>Composes what the price takes in and leaves out from the job and its unknowns.</summary>
/// <remarks>Source: common practice, no source.</remarks>
internal static class BidScope
{
    internal static ImmutableArray<string> Inclusions(HouseLayout layout, TakeoffResult takeoff)
    {
        var rooms = layout.Devices.Select(d => d.Place.Room).Distinct().Count();
        return
        [
            $"Wiring of {takeoff.Openings.Value:0} openings in {rooms} rooms under {EditionWords(layout.House.Job.Code.Edition)} and the local amendments stated.",
            "Cable, boxes, devices and plates, breakers, connectors and fasteners as listed.",
            "Connection of the equipment named, tests, panel directory, permit and two inspections.",
        ];
    }

    internal static ImmutableArray<string> Exclusions(HouseLayout layout, PurchasePlan purchase)
    {
        var job = layout.House.Job;
        ImmutableArray<string> always =
        [
            "Patching, painting, trenching, and charges of the utility.",
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
