using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring;

namespace Estimator.Engine.Loads;

/// <summary>Makes the load calculations of a job from its rooms, equipment and panels.</summary>
public static class JobLoads
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = 2;

    /// <summary>
    /// A dwelling that the job draws whole: standard and optional. An existing service: those and the existing-dwelling method where the rest of the
    /// dwelling is known, and the measured one where a demand was measured. None where nothing is known of the rest.
    /// </summary>
    public static LoadWorksheets Compute(HouseLayout layout, WiringPlan wiring)
    {
        var page = new PageWriter(PageNumber);
        var sheets = ImmutableArray.CreateBuilder<LoadWorksheet>();
        var (service, path) = Service(layout.House.Job);
        var input = Input(layout, service, path, page);
        // A panel that takes another's place brings its circuits, and its dwelling is there already.
        var isThere = service is { Existing: true } or { Circuits.IsEmpty: false };
        if (!isThere || RestIsKnown(service!))
        {
            sheets.Add(new DwellingLoads(page, input).Standard());
            sheets.Add(new DwellingLoads(page, input).Optional());
            if (isThere)
            {
                sheets.Add(new DwellingLoads(page, input).Existing());
            }
        }

        if (isThere && service!.MeasuredDemandVa is { } demand)
        {
            var measured = page.Given($"{path}.measured_demand_va", "Measured demand", demand.ToVoltAmperes(), Unit.VoltAmperes);
            sheets.Add(new DwellingLoads(page, input).Measured(measured, [.. layout.Equipment.Select(e => e.LoadVa), .. NewRooms(layout, page)]));
        }

        var feeders = FeederLoads.Of(layout, wiring, page);
        return new LoadWorksheets(sheets.ToImmutable(), page.ToPage()) { Feeders = feeders, Findings = [.. feeders.SelectMany(f => FeederLoads.Findings(layout, f))] };
    }

    private static (Panel? Panel, string Path) Service(Job job) =>
        job.Panels.Select((p, i) => ((Panel?)p, $"$.panels[{i}]")).FirstOrDefault(x => x.Item1!.FedFrom is null, (null, ""));

    // Two-pole circuits feed ranges, dryers, heat and the like: without their load the sum means nothing.
    private static bool RestIsKnown(Panel service) => service.OtherAreaSqFt is not null && service.Circuits.All(c => c.Poles == 1 || c.LoadVa is not null);

    // What the job's rooms add to a demand that was measured without them: lighting by area, and the circuits of a kitchen or laundry.
    private static IEnumerable<Fact> NewRooms(HouseLayout layout, PageWriter page)
    {
        yield return page.Compute(Operation.Product, "general-lighting", "Lighting and receptacles of the job's rooms", Unit.VoltAmperes, CountedArea(layout, page), LoadRules.UnitLoad((int)layout.House.Job.Code.Edition).Read(page, Unit.Factor));
        if (layout.House.Rooms.Any(r => r.Source.Kind is RoomKind.Kitchen))
        {
            yield return page.Compute(Operation.Product, "small-appliance", "Small-appliance circuits of the job's kitchen", Unit.VoltAmperes, WiringSettings.SmallApplianceCircuits.Read(page, Unit.Each), LoadRules.SmallAppliance.Read(page, Unit.VoltAmperes));
        }

        if (layout.House.Rooms.Any(r => r.Source.Kind is RoomKind.Laundry))
        {
            yield return LoadRules.Laundry.Read(page, Unit.VoltAmperes);
        }
    }

    private static LoadInput Input(HouseLayout layout, Panel? service, string path, PageWriter page)
    {
        var job = layout.House.Job;
        List<CountedLoad> all = [.. job.Equipment.Select((_, i) => CountedLoad.Of(layout, i, page)), .. CountedLoad.OfCircuits(job, _ => true, page)];
        var area = service?.OtherAreaSqFt is { } other
            ? page.Compute(Operation.Sum, "counted-area", "Floor area with the rest of the dwelling", Unit.SquareFeet, CountedArea(layout, page), page.Given($"{path}.other_area_sq_ft", "Floor area outside the job", other.ToSquareFeet(), Unit.SquareFeet))
            : CountedArea(layout, page);
        var fresh = layout.Equipment.Where(e => e.Source.Kind is EquipmentKind.AirConditioner or EquipmentKind.HeatPump or EquipmentKind.ElectricHeat).Select(e => e.LoadVa);
        return CountedLoad.Input(all, (int)job.Code.Edition, area, WiringSettings.SmallApplianceCircuits.Read(page, Unit.Each), page.Constant("Laundry circuits", 1, Unit.Each), page) with { NewHeatOrCooling = [.. fresh] };
    }

    internal static Fact CountedArea(HouseLayout layout, PageWriter page) =>
        page.Sum("counted-area", "Floor area that counts", Unit.SquareFeet, [.. layout.House.Rooms.Where(r => Counts(r.Source)).Select(r => r.AreaSquareFeet)]);

    // Garages, porches, voids and crawl spaces do not count; a basement counts, finished or not, since it can be finished.
    internal static bool Counts(Room room) => room.Kind is not (RoomKind.Garage or RoomKind.Outdoors or RoomKind.Void or RoomKind.Crawl or RoomKind.Attic);
}
