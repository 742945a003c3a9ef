using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;

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
    public static LoadWorksheets Compute(HouseLayout layout)
    {
        var page = new PageWriter(PageNumber);
        var sheets = ImmutableArray.CreateBuilder<LoadWorksheet>();
        var (service, path) = Service(layout.House.Job);
        var input = Input(layout, service, path, page);
        if (service is not { Existing: true } || RestIsKnown(service))
        {
            sheets.Add(new DwellingLoads(page, input).Standard());
            sheets.Add(new DwellingLoads(page, input).Optional());
            if (service is { Existing: true })
            {
                sheets.Add(new DwellingLoads(page, input).Existing());
            }
        }

        if (service is { Existing: true, MeasuredDemandVa: { } demand })
        {
            var measured = page.Given($"{path}.measured_demand_va", "Measured demand", demand.ToVoltAmperes(), Unit.VoltAmperes);
            sheets.Add(new DwellingLoads(page, input).Measured(measured, [.. layout.Equipment.Select(e => e.LoadVa), .. NewRooms(layout, page)]));
        }

        return new LoadWorksheets(sheets.ToImmutable(), page.ToPage());
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
        var all = job.Equipment.Select((e, i) => (e.Kind, Load: LoadOf(layout, e, i, page))).Concat(Existing(job, page)).ToList();
        ImmutableArray<Fact> Of(params ReadOnlySpan<EquipmentKind> kinds)
        {
            var wanted = kinds.ToArray();
            return [.. all.Where(x => wanted.Contains(x.Kind)).Select(x => x.Load)];
        }

        var fresh = layout.Equipment.Where(e => e.Source.Kind is EquipmentKind.AirConditioner or EquipmentKind.HeatPump or EquipmentKind.ElectricHeat).Select(e => e.LoadVa);
        return new LoadInput
        {
            Year = (int)job.Code.Edition,
            AreaSquareFeet = service?.OtherAreaSqFt is { } other
                ? page.Compute(Operation.Sum, "counted-area", "Floor area with the rest of the dwelling", Unit.SquareFeet, CountedArea(layout, page), page.Given($"{path}.other_area_sq_ft", "Floor area outside the job", other.ToSquareFeet(), Unit.SquareFeet))
                : CountedArea(layout, page),
            SmallApplianceCircuits = WiringSettings.SmallApplianceCircuits.Read(page, Unit.Each),
            LaundryCircuits = page.Constant("Laundry circuits", 1, Unit.Each),
            Cooking = Of(EquipmentKind.Range, EquipmentKind.Oven, EquipmentKind.Cooktop),
            Dryers = Of(EquipmentKind.Dryer),
            Fastened = Of(EquipmentKind.Dishwasher, EquipmentKind.Disposal, EquipmentKind.Microwave, EquipmentKind.WaterHeater, EquipmentKind.Furnace, EquipmentKind.SumpPump, EquipmentKind.Other),
            FastenedOnNeutral = Of(EquipmentKind.Dishwasher, EquipmentKind.Disposal, EquipmentKind.Microwave, EquipmentKind.Furnace, EquipmentKind.SumpPump),
            Evse = Of(EquipmentKind.EvCharger),
            SpaceHeat = Of(EquipmentKind.ElectricHeat),
            HeatControls = Math.Max(1, all.Count(x => x.Kind is EquipmentKind.ElectricHeat)),
            Cooling = Of(EquipmentKind.AirConditioner, EquipmentKind.HeatPump),
            HeatPump = all.Any(x => x.Kind is EquipmentKind.HeatPump),
            NewHeatOrCooling = [.. fresh],
            Volts = EquipmentDefaults.For(EquipmentKind.Range).Read(page, Unit.Volts, "volts"),
        };
    }

    private static Fact CountedArea(HouseLayout layout, PageWriter page) =>
        page.Sum("counted-area", "Floor area that counts", Unit.SquareFeet, [.. layout.House.Rooms.Where(r => Counts(r.Source)).Select(r => r.AreaSquareFeet)]);

    // Garages, porches, voids and crawl spaces do not count; a basement counts, finished or not, since it can be finished.
    private static bool Counts(Room room) => room.Kind is not (RoomKind.Garage or RoomKind.Outdoors or RoomKind.Void or RoomKind.Crawl or RoomKind.Attic);

    private static Fact LoadOf(HouseLayout layout, Equipment equipment, int index, PageWriter page) =>
        layout.Equipment.FirstOrDefault(e => e.Source.Id == equipment.Id) is { } laid ? laid.LoadVa
        : equipment.LoadVa is { } own ? page.Given($"$.equipment[{index}].load_va", "Nameplate load", own.ToVoltAmperes(), Unit.VoltAmperes)
        : EquipmentDefaults.For(equipment.Kind).Read(page, Unit.VoltAmperes, "load_va");

    private static IEnumerable<(EquipmentKind Kind, Fact Load)> Existing(Job job, PageWriter page) =>
        job.Panels.SelectMany((p, i) => p.Circuits.Select((c, j) => (Circuit: c, Path: $"$.panels[{i}].circuits[{j}].load_va")))
            .Where(x => x.Circuit.LoadVa is not null)
            .Select(x => (EquipmentKind.Other, page.Given(x.Path, x.Circuit.Name, x.Circuit.LoadVa!.Value.ToVoltAmperes(), Unit.VoltAmperes)));
}
