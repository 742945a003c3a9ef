using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Loads;

/// <summary>An appliance as a load calculation counts it.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Load">Its nameplate.</param>
/// <param name="OnNeutral">Whether it runs at 120 V and so loads the neutral.</param>
/// <param name="Motor">Whether it is driven by a motor.</param>
/// <param name="Continuous">Whether it runs for three hours or more.</param>
internal sealed record CountedLoad(EquipmentKind Kind, Fact Load, bool OnNeutral, bool Motor, bool Continuous)
{
    private const int LineToNeutral = 120;

    private static readonly ImmutableArray<EquipmentKind> FastenedKinds =
        [EquipmentKind.Dishwasher, EquipmentKind.Disposal, EquipmentKind.Microwave, EquipmentKind.WaterHeater, EquipmentKind.Furnace, EquipmentKind.SumpPump, EquipmentKind.Other];

    internal bool IsFastened => FastenedKinds.Contains(Kind);

    /// <summary>A piece of the job, laid out or there already.</summary>
    internal static CountedLoad Of(HouseLayout layout, int index, PageWriter page)
    {
        var equipment = layout.House.Job.Equipment[index];
        var row = EquipmentDefaults.For(equipment.Kind);
        var load = layout.Equipment.FirstOrDefault(e => e.Source.Id == equipment.Id) is { } laid ? laid.LoadVa
            : equipment.LoadVa is { } own ? page.Given($"$.equipment[{index}].load_va", "Nameplate load", own.ToVoltAmperes(), Unit.VoltAmperes)
            : row.Read(page, Unit.VoltAmperes, "load_va");
        return new CountedLoad(equipment.Kind, load, (equipment.Volts ?? row.Number("volts")) == LineToNeutral, row.Flag("motor"), row.Flag("continuous"));
    }

    /// <summary>The stated loads of circuits that panels carry already, or that are moved to them.</summary>
    internal static IEnumerable<CountedLoad> OfCircuits(Job job, Func<Panel, bool> panels, PageWriter page) =>
        job.Panels.Where(panels).SelectMany(p => PanelCircuits.Of(job, p)).Where(x => x.Circuit.LoadVa is not null)
            .Select(x => new CountedLoad(EquipmentKind.Other, page.Given($"{x.Path}.load_va", x.Circuit.Name, x.Circuit.LoadVa!.Value.ToVoltAmperes(), Unit.VoltAmperes), x.Circuit.Poles == 1, Motor: false, Continuous: false));

    /// <summary>The input of a calculation with these appliances.</summary>
    internal static LoadInput Input(IReadOnlyList<CountedLoad> all, int year, Fact area, Fact smallAppliance, Fact laundry, PageWriter page)
    {
        ImmutableArray<Fact> Of(Func<CountedLoad, bool> wanted) => [.. all.Where(wanted).Select(x => x.Load)];
        return new LoadInput
        {
            Year = year,
            AreaSquareFeet = area,
            SmallApplianceCircuits = smallAppliance,
            LaundryCircuits = laundry,
            Cooking = Of(x => x.Kind is EquipmentKind.Range or EquipmentKind.Oven or EquipmentKind.Cooktop),
            Dryers = Of(x => x.Kind is EquipmentKind.Dryer),
            Fastened = Of(x => x.IsFastened),
            FastenedOnNeutral = Of(x => x.IsFastened && x.OnNeutral),
            Motors = Of(x => x.IsFastened && x.Motor),
            MotorsOnNeutral = Of(x => x.IsFastened && x.Motor && x.OnNeutral),
            Evse = Of(x => x.Kind is EquipmentKind.EvCharger),
            SpaceHeat = Of(x => x.Kind is EquipmentKind.ElectricHeat),
            HeatControls = Math.Max(1, all.Count(x => x.Kind is EquipmentKind.ElectricHeat)),
            Cooling = Of(x => x.Kind is EquipmentKind.AirConditioner or EquipmentKind.HeatPump),
            HeatPump = all.Any(x => x.Kind is EquipmentKind.HeatPump),
            Volts = EquipmentDefaults.For(EquipmentKind.Range).Read(page, Unit.Volts, "volts"),
        };
    }
}
