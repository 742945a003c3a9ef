using Estimator.Engine.House;
using Estimator.Engine.Rules;

namespace Estimator.TestKit.Editions;

/// <summary>Outlets by name, each in a place of which the protection rules say something by edition.</summary>
public static class Outlets
{
    private static readonly Dictionary<string, OutletPlace> Known = new(StringComparer.Ordinal)
    {
        ["bathroom_receptacle"] = In(RoomKind.Bathroom),
        ["garage_receptacle"] = In(RoomKind.Garage),
        ["outdoor_receptacle"] = In(RoomKind.Outdoors),
        ["crawl_receptacle"] = In(RoomKind.Crawl),
        ["crawl_light"] = In(RoomKind.Crawl) with { IsReceptacle = false },
        ["unfinished_basement_receptacle"] = In(RoomKind.Basement) with { Finished = false, InBasement = true },
        ["finished_basement_receptacle"] = In(RoomKind.Family) with { InBasement = true },
        ["counter_receptacle"] = In(RoomKind.Kitchen) with { Serves = ServedPlace.Counter },
        ["kitchen_wall_receptacle"] = In(RoomKind.Kitchen),
        ["bar_receptacle"] = In(RoomKind.Family) with { ServesFood = true },
        ["receptacle_at_sink"] = In(RoomKind.Office) with { WithinSixFeetOfSink = true },
        ["receptacle_at_tub"] = In(RoomKind.Bedroom) with { WithinSixFeetOfTub = true },
        ["laundry_receptacle"] = In(RoomKind.Laundry),
        ["dryer_receptacle_240_v"] = In(RoomKind.Laundry) with { Volts = 240, Equipment = EquipmentKind.Dryer, Serves = ServedPlace.Appliance },
        ["range_receptacle_240_v"] = In(RoomKind.Kitchen) with { Volts = 240, Equipment = EquipmentKind.Range, Serves = ServedPlace.Appliance },
        ["wall_oven_hard_wired"] = In(RoomKind.Kitchen) with { Volts = 240, Equipment = EquipmentKind.Oven, IsReceptacle = false, HardWired = true, Serves = ServedPlace.Appliance },
        ["dishwasher_hard_wired"] = In(RoomKind.Kitchen) with { Equipment = EquipmentKind.Dishwasher, IsReceptacle = false, HardWired = true, Serves = ServedPlace.Appliance },
        ["sump_pump_hard_wired_indoors"] = In(RoomKind.Utility) with { Equipment = EquipmentKind.SumpPump, IsReceptacle = false, HardWired = true, Serves = ServedPlace.Appliance },
        ["equipment_outdoors_hard_wired"] = Outdoors(EquipmentKind.Other),
        ["equipment_outdoors_on_55_a"] = Outdoors(EquipmentKind.Other) with { DeviceA = 55 },
        ["air_conditioner_outdoors"] = Outdoors(EquipmentKind.AirConditioner),
        ["inverter_unit_outdoors"] = Outdoors(EquipmentKind.HeatPump) with { Inverter = true },
        ["charger_receptacle"] = In(RoomKind.Utility) with { Volts = 240, Equipment = EquipmentKind.EvCharger, Serves = ServedPlace.Appliance },
        ["shed_receptacle"] = In(RoomKind.Storage) with { Accessory = true },
        ["shed_light"] = In(RoomKind.Storage) with { Accessory = true, IsReceptacle = false },
        ["bedroom_receptacle"] = In(RoomKind.Bedroom),
        ["bedroom_switch"] = In(RoomKind.Bedroom) with { IsReceptacle = false },
        ["closet_light"] = In(RoomKind.Closet) with { IsReceptacle = false },
        ["hall_receptacle"] = In(RoomKind.Hall),
        ["living_receptacle"] = In(RoomKind.Living),
    };

    /// <summary>The names.</summary>
    public static IEnumerable<string> Names => Known.Keys;

    /// <summary>The outlet of a name.</summary>
    public static OutletPlace Of(string name) => Known[name];

    private static OutletPlace In(RoomKind room) => new() { Room = room };

    private static OutletPlace Outdoors(EquipmentKind kind) =>
        new() { Room = RoomKind.Outdoors, Volts = 240, Equipment = kind, IsReceptacle = false, HardWired = true, Serves = ServedPlace.Appliance };
}
