using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring;
using Estimator.Engine.Wiring.Circuits;

namespace Estimator.Engine.Loads;

/// <summary>The schedule of every panel of a job.</summary>
/// <param name="Panels">One schedule a panel, in the order of the job.</param>
/// <param name="Page">Page of the explanation book.</param>
/// <remarks>
/// Equipment loads its breaker by nameplate, small-appliance and laundry circuits by what each counts in the dwelling, and the load by area is shared evenly
/// among the other circuits of several outlets. Source: NEC 210.11(B), 220.52.
/// </remarks>
public sealed record PanelSchedules(ImmutableArray<PanelSchedule> Panels, ExplanationPage Page)
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = 8;

    /// <summary>The schedules of a job.</summary>
    public static PanelSchedules Compute(HouseLayout layout, WiringPlan wiring, LoadWorksheets loads)
    {
        var page = new PageWriter(PageNumber);
        var share = EvenShare(layout, wiring, page);
        var panels = layout.House.Job.Panels.Select((p, i) =>
            PanelArranging.Arrange(page, p.Id, p.Spaces, p.TandemSpaces, [.. Existing(layout, p, share, page), .. Feeders(layout, p, loads, page), .. New(layout, wiring, i, share, page)]));
        return new PanelSchedules([.. panels], page.ToPage());
    }

    /// <summary>The schedule of a panel.</summary>
    /// <exception cref="InvalidOperationException">The job has no such panel.</exception>
    public PanelSchedule this[string panelId] => Panels.First(p => p.PanelId == panelId);

    private static IEnumerable<BreakerLoad> New(HouseLayout layout, WiringPlan wiring, int panel, Fact share, PageWriter page) =>
        wiring.Circuits.Where(c => layout.Panels[c.Panel].Source.Id == layout.House.Job.Panels[panel].Id && c.BreakerPoles > 0)
            .Select(c => c.SharesNeutralWith is { } other && wiring.Circuits[other] is var second
                ? new BreakerLoad(c.Id, $"{c.Name} / {second.Name}", BreakerOrigin.Circuit, c.BreakerA.Value, c.BreakerPoles, Whole(Both(c, second, share, page), page))
                : new BreakerLoad(c.Id, c.Name, BreakerOrigin.Circuit, c.BreakerA.Value, c.Poles, Whole(LoadOf(c, share, page), page)));

    // Both circuits are of one kind, so each leg bears half.
    private static Fact Both(Circuit one, Circuit other, Fact share, PageWriter page) =>
        page.Compute(Operation.Sum, "multiwire-load", "Both circuits of the breaker", Unit.VoltAmperes, LoadOf(one, share, page), LoadOf(other, share, page));

    private static Fact LoadOf(Circuit circuit, Fact share, PageWriter page) => circuit.Kind switch
    {
        CircuitKind.Individual => circuit.LoadVa,
        CircuitKind.SmallAppliance => LoadRules.SmallAppliance.Read(page, Unit.VoltAmperes),
        CircuitKind.Laundry => LoadRules.Laundry.Read(page, Unit.VoltAmperes),
        CircuitKind.Bathroom or CircuitKind.Garage or CircuitKind.Receptacles or CircuitKind.Lighting or CircuitKind.General => share,
        _ => throw new InvalidOperationException($"{circuit.Kind} has no load in a schedule."),
    };

    // What is moved here, or landed in a new panel, stands where it suits the legs; what stays keeps its space.
    private static IEnumerable<BreakerLoad> Existing(HouseLayout layout, Panel panel, Fact share, PageWriter page) =>
        PanelCircuits.Of(layout.House.Job, panel).Select(x => new BreakerLoad(
            x.Circuit.Id, x.Circuit.Name.Length > 0 ? x.Circuit.Name : x.Circuit.Id, x.Landed ? BreakerOrigin.Landed : BreakerOrigin.Existing, x.Circuit.BreakerA.ToAmperes(), x.Circuit.Poles,
            x.Circuit.LoadVa is { } load ? Whole(page.Given($"{x.Path}.load_va", x.Circuit.Name, load.ToVoltAmperes(), Unit.VoltAmperes), page)
            : x.Circuit.Poles == 1 && RestIsKnown(layout) ? Whole(share, page) : page.Constant("No load stated", 0, Unit.VoltAmperes),
            x.Landed || x.Circuit.NewTandem ? null : x.Circuit.Space, !x.Landed && (x.Circuit.Tandem || x.Circuit.NewTandem)));

    // The breaker of a panel that is there already stands in the directory of the one that feeds it.
    private static IEnumerable<BreakerLoad> Feeders(HouseLayout layout, Panel panel, LoadWorksheets loads, PageWriter page) =>
        layout.House.Job.Panels.Where(p => p.FedFrom == panel.Id && !p.Existing).Select(p => new BreakerLoad(
            p.Id, p.Called(), BreakerOrigin.Feeder, p.RatingA.ToAmperes(), 2, Whole(loads.Feeders.First(f => f.PanelId == p.Id).Sheet.TotalVa, page)));

    private static bool RestIsKnown(HouseLayout layout) => layout.House.Job.Panels.Any(p => p.OtherAreaSqFt is not null);

    // The load by area, in equal parts on all circuits that it is for.
    private static Fact EvenShare(HouseLayout layout, WiringPlan wiring, PageWriter page)
    {
        var job = layout.House.Job;
        var general = wiring.Circuits.Count(c => c.Kind is not (CircuitKind.Individual or CircuitKind.SmallAppliance or CircuitKind.Laundry));
        var rest = RestIsKnown(layout) ? job.Panels.SelectMany(p => p.Circuits).Count(c => c.Poles == 1 && c.LoadVa is null) : 0;
        var other = job.Panels.Select((p, i) => (p, i)).Where(x => x.p.OtherAreaSqFt is not null)
            .Select(x => page.Given($"$.panels[{x.i}].other_area_sq_ft", "Floor area outside the job", x.p.OtherAreaSqFt!.Value.ToSquareFeet(), Unit.SquareFeet));
        var area = page.Sum("general-area", "Floor area that counts", Unit.SquareFeet, [JobLoads.CountedArea(layout, page), .. other]);
        var load = page.Compute(Operation.Product, "general-load", "Load by area", Unit.VoltAmperes, area, LoadRules.UnitLoadForCircuits.Read(page, Unit.Factor));
        return page.Compute(Operation.Quotient, "even-share", "Even share of the load by area", Unit.VoltAmperes, load, page.Constant("Circuits that it is for", Math.Max(1, general + rest), Unit.Each));
    }

    private static Fact Whole(Fact load, PageWriter page) => page.Compute(Operation.RoundNearest, "whole-va", "To the whole volt-ampere", Unit.VoltAmperes, load, page.Constant("One", 1, Unit.VoltAmperes));
}
