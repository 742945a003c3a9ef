using System.Text.Json.Serialization;

namespace Estimator.Engine.House;

/// <summary>What a piece of equipment is.</summary>
public enum EquipmentKind
{
    /// <summary>Range: oven and cooktop in one.</summary>
    Range = 1,

    /// <summary>Wall oven.</summary>
    Oven,

    /// <summary>Cooktop.</summary>
    Cooktop,

    /// <summary>Clothes dryer.</summary>
    Dryer,

    /// <summary>Dishwasher.</summary>
    Dishwasher,

    /// <summary>Food waste disposal.</summary>
    Disposal,

    /// <summary>Microwave oven.</summary>
    Microwave,

    /// <summary>Refrigerator or freezer.</summary>
    Refrigerator,

    /// <summary>Water heater.</summary>
    WaterHeater,

    /// <summary>Furnace or boiler.</summary>
    Furnace,

    /// <summary>Air conditioner.</summary>
    AirConditioner,

    /// <summary>Heat pump.</summary>
    HeatPump,

    /// <summary>Fixed electric heat.</summary>
    ElectricHeat,

    /// <summary>Sump pump.</summary>
    SumpPump,

    /// <summary>Electric vehicle charger.</summary>
    [JsonStringEnumMemberName("ev_charger")]
    EvCharger,

    /// <summary>Anything else with a nameplate.</summary>
    Other,
}
