using Estimator.Engine.House;

namespace Estimator.Web.Plans;

/// <summary>The letters beside the outlet of a piece of equipment, and its name.</summary>
/// <remarks>The sign itself is a circle with a triangle that points to the wall; letters as common on plans, no source for most.</remarks>
/// <param name="Letters">Letters to the lower right of the sign.</param>
/// <param name="Name">Its name in a sentence.</param>
public sealed record EquipmentSign(string Letters, string Name)
{
    /// <summary>The sign of a kind.</summary>
    public static EquipmentSign Of(EquipmentKind kind) => kind switch
    {
        EquipmentKind.Range => new("R", "range"),
        EquipmentKind.Oven => new("OV", "wall oven"),
        EquipmentKind.Cooktop => new("CT", "cooktop"),
        EquipmentKind.Dryer => new("D", "clothes dryer"),
        EquipmentKind.Dishwasher => new("DW", "dishwasher"),
        EquipmentKind.Disposal => new("DISP", "food waste disposal"),
        EquipmentKind.Microwave => new("MW", "microwave oven"),
        EquipmentKind.Refrigerator => new("REF", "refrigerator"),
        EquipmentKind.WaterHeater => new("WH", "water heater"),
        EquipmentKind.Furnace => new("FURN", "furnace"),
        EquipmentKind.AirConditioner => new("AC", "air conditioner"),
        EquipmentKind.HeatPump => new("HP", "heat pump"),
        EquipmentKind.ElectricHeat => new("EH", "electric heat"),
        EquipmentKind.SumpPump => new("SUMP", "sump pump"),
        EquipmentKind.EvCharger => new("EV", "vehicle charger"),
        EquipmentKind.Other => new("", "equipment"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such equipment."),
    };
}
