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

    /// <summary>Standard and optional for every job; existing-dwelling and measured where the service panel is there already.</summary>
    public static LoadWorksheets Compute(HouseLayout layout)
    {
        var page = new PageWriter(PageNumber);
        var input = Input(layout, page);
        var sheets = ImmutableArray.CreateBuilder<LoadWorksheet>();
        sheets.Add(new DwellingLoads(page, input).Standard());
        sheets.Add(new DwellingLoads(page, input).Optional());
        var service = layout.House.Job.Panels.FirstOrDefault(p => p.FedFrom is null);
        if (service is { Existing: true })
        {
            sheets.Add(new DwellingLoads(page, input).Existing());
            if (service.MeasuredDemandVa is { } measured)
            {
                var index = layout.House.Job.Panels.IndexOf(service);
                var given = page.Given($"$.panels[{index}].measured_demand_va", "Measured demand", measured.ToVoltAmperes(), Unit.VoltAmperes);
                sheets.Add(new DwellingLoads(page, input).Measured(given, [.. layout.Equipment.Select(e => e.LoadVa)]));
            }
        }

        return new LoadWorksheets(sheets.ToImmutable(), page.ToPage());
    }

    private static LoadInput Input(HouseLayout layout, PageWriter page)
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
            AreaSquareFeet = page.Sum("counted-area", "Floor area that counts", Unit.SquareFeet, [.. layout.House.Rooms.Where(r => Counts(r.Source)).Select(r => r.AreaSquareFeet)]),
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
