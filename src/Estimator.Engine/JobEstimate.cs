using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Checks;
using Estimator.Engine.Controls;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Labor;
using Estimator.Engine.Layout;
using Estimator.Engine.Loads;
using Estimator.Engine.Pricing;
using Estimator.Engine.Purchase;
using Estimator.Engine.Purchase.Suppliers;
using Estimator.Engine.Takeoff;
using Estimator.Engine.Wiring;

namespace Estimator.Engine;

/// <summary>Every stage of a job, from the house to the bid, each made from those before it.</summary>
public sealed record JobEstimate
{
    /// <summary>The house in canonical pose.</summary>
    public required FramedHouse House { get; init; }

    /// <summary>Where everything stands.</summary>
    public required HouseLayout Layout { get; init; }

    /// <summary>What acts on what.</summary>
    public required ControlPlan Controls { get; init; }

    /// <summary>Circuits, runs and boxes.</summary>
    public required WiringPlan Wiring { get; init; }

    /// <summary>Quantities.</summary>
    public required TakeoffResult Takeoff { get; init; }

    /// <summary>Packs, coils and the cut plan.</summary>
    public required PurchasePlan Purchase { get; init; }

    /// <summary>Hours.</summary>
    public required LaborPlan Labor { get; init; }

    /// <summary>The price.</summary>
    public required Bid Bid { get; init; }

    /// <summary>Load calculations.</summary>
    public required LoadWorksheets Loads { get; init; }

    /// <summary>Every panel with its breakers in their spaces.</summary>
    public required PanelSchedules Schedules { get; init; }

    /// <summary>Findings of all stages and checks, worst first.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Codes of the judged rules that applied to something in the house.</summary>
    public required ImmutableHashSet<string> AppliedRules { get; init; }

    /// <summary>What explains every figure.</summary>
    public required ExplanationBook Book { get; init; }

    /// <summary>How far the search for the wiring went; documents render thorough estimates only.</summary>
    public required SearchDepth Depth { get; init; }

    /// <summary>Runs all stages.</summary>
    /// <param name="job">The job, read and found in order.</param>
    /// <param name="catalogue">The catalogue.</param>
    /// <param name="depth">How far the search for the wiring goes.</param>
    public static JobEstimate Compute(Job job, PartsCatalogue catalogue, SearchDepth depth = SearchDepth.Thorough)
    {
        var house = HouseFraming.Frame(job);
        var layout = HousePlacement.Place(house);
        var controls = HouseControls.Plan(layout);
        var wiring = HouseWiring.Plan(layout, controls, catalogue.Boxes, depth);
        var takeoff = QuantityTakeoff.Compute(layout, wiring, catalogue);
        var purchase = Buying.For(job.Id, takeoff, catalogue.WithOffers(o => BreakerFit.Fits(o, job.Panels)), depth: depth);
        var labor = LaborHours.Compute(job, takeoff, catalogue);
        var bid = BidPricing.Compute(layout, takeoff, purchase, labor);
        var loads = JobLoads.Compute(layout, wiring);
        var schedules = PanelSchedules.Compute(layout, wiring, loads);
        var checks = HouseChecks.Judge(layout, controls, wiring, loads);
        return new JobEstimate
        {
            Depth = depth,
            House = house,
            Layout = layout,
            Controls = controls,
            Wiring = wiring,
            Takeoff = takeoff,
            Purchase = purchase,
            Labor = labor,
            Bid = bid,
            Loads = loads,
            Schedules = schedules,
            Findings = [.. layout.Findings.Concat(controls.Findings).Concat(wiring.Findings).Concat(takeoff.Findings).Concat(purchase.Findings)
                .Concat(loads.Findings).Concat(checks.Findings).Concat(labor.Findings).Concat(CrewChecks.Of(job.Bid)).OrderBy(f => f.Severity)],
            AppliedRules = checks.Applied,
            Book = new ExplanationBook([house.Page, layout.Page, .. wiring.Pages, takeoff.Page, purchase.Page, labor.Page, bid.Page, loads.Page, schedules.Page, checks.Page]),
        };
    }
}
