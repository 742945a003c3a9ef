using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.TestKit.Editions;

/// <summary>Small jobs by name, each in one situation of which the editions say something. One room 16 by 12 ft, its door in the middle of the south wall, unless said.</summary>
public static partial class Situations
{
    private static readonly Dictionary<string, Func<Job>> Known = new(StringComparer.Ordinal)
    {
        ["island_bare"] = () => Kitchen(Island(6, 3)),
        ["island_of_18_sq_ft_with_one"] = () => Kitchen(Island(6, 3), (DeviceKind.DuplexReceptacle, 1, ServedPlace.Island)),
        ["island_of_18_sq_ft_with_two"] = () => Kitchen(Island(6, 3), (DeviceKind.DuplexReceptacle, 2, ServedPlace.Island)),
        ["island_receptacle_8_in_below_top"] = () => Kitchen(Island(6, 3)).With(r => r with { Placed = [At("isle", DeviceKind.DuplexReceptacle, 8, 6, 28, ServedPlace.Island)] }),
        ["counter_receptacle_30_in_above_top"] = () => Kitchen(Counter(4)).With(r => r with { Placed = [OnWall("high", DeviceKind.DuplexReceptacle, 3, 8, 66, ServedPlace.Counter)] }),
        ["wall_receptacle_20_in_below_counter"] = () => Kitchen(Counter(4)).With(r => r with { Placed = [OnWall("low", DeviceKind.DuplexReceptacle, 3, 8, 16)] }),
        ["wall_receptacle_30_in_below_counter"] = () => Kitchen(Counter(4)).With(r => r with { Placed = [OnWall("low", DeviceKind.DuplexReceptacle, 3, 8, 6)] }),
        ["counter_8_ft_with_one"] = () => Kitchen(Counter(8), (DeviceKind.DuplexReceptacle, 1, ServedPlace.Counter)),
        ["counter_8_ft_with_two_at_one_end"] = () => Kitchen(Counter(8)).With(r => r with { Placed = [OnWall("a", DeviceKind.DuplexReceptacle, 3, 4.5m, 44, ServedPlace.Counter), OnWall("b", DeviceKind.DuplexReceptacle, 3, 5, 44, ServedPlace.Counter)] }),
        ["bath_without_receptacle"] = () => Room(RoomKind.Bathroom),
        ["bath_receptacle_7_ft_from_basin"] = () => Room(RoomKind.Bathroom).With(r => r with { Fixtures = [Fixture(FixtureKind.Sink, 1, 11)], Placed = [OnWall("b", DeviceKind.DuplexReceptacle, 3, 8, 42, ServedPlace.Basin)] }),
        ["bath_receptacle_2_ft_from_basin"] = () => Room(RoomKind.Bathroom).With(r => r with { Fixtures = [Fixture(FixtureKind.Sink, 8, 11)], Placed = [OnWall("b", DeviceKind.DuplexReceptacle, 3, 6, 42, ServedPlace.Basin)] }),
        ["tub_receptacle_25_in_from_edge"] = () => Tub(OnWall("b", DeviceKind.DuplexReceptacle, 3, 7.333m, 42, ServedPlace.Basin)),
        ["tub_receptacle_25_in_from_edge_12_in_high"] = () => Tub(OnWall("b", DeviceKind.DuplexReceptacle, 3, 7.333m, 12, ServedPlace.Basin)),
        ["tub_receptacle_over_it"] = () => Tub(OnWall("b", DeviceKind.DuplexReceptacle, 3, 4, 42, ServedPlace.Basin)),
        ["tub_receptacle_8_ft_away"] = () => Tub(OnWall("b", DeviceKind.DuplexReceptacle, 3, 12, 42, ServedPlace.Basin)),
        ["tub_switch_over_it"] = () => Tub(OnWall("b", DeviceKind.SinglePoleSwitch, 3, 4, 48)),
        ["hall_10_ft"] = () => Room(RoomKind.Hall).With(r => r with { Size = new RectangleSize(Length.FromFeet(10), Length.FromFeet(8)) }),
        ["hall_short"] = () => Room(RoomKind.Hall).With(r => r with { Size = new RectangleSize(Length.FromFeet(9), Length.FromFeet(8)) }),
        ["foyer_of_192_sq_ft_bare"] = () => Room(RoomKind.Foyer),
        ["laundry_bare"] = () => Room(RoomKind.Laundry),
        ["laundry_light_without_switch"] = () => Room(RoomKind.Laundry, (DeviceKind.CeilingLight, 1, ServedPlace.Room)),
        ["garage_bare"] = () => Room(RoomKind.Garage),
        ["basement_portion_bare"] = () => Room(RoomKind.Basement).With(r => r with { Finished = false }),
        ["bedroom_two_receptacles"] = () => Room(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 2, ServedPlace.Room)),
        ["bedroom_dark"] = () => Room(RoomKind.Bedroom),
        ["bedroom_half_hot_receptacle"] = () => Room(RoomKind.Bedroom, (DeviceKind.HalfHotReceptacle, 1, ServedPlace.Room), (DeviceKind.SinglePoleSwitch, 1, ServedPlace.Room)),
        ["hall_dark"] = () => Room(RoomKind.Hall),
        ["utility_dark"] = () => Room(RoomKind.Utility),
        ["attic_with_furnace_dark"] = () => Equipped(Room(RoomKind.Attic), EquipmentKind.Furnace),
        ["switch_7_ft_high"] = () => Room(RoomKind.Bedroom).With(r => r with { Placed = [OnWall("s", DeviceKind.SinglePoleSwitch, 1, 4, 84)] }),
        ["entrance_dark"] = () => Room(RoomKind.Foyer) is var job ? job with { Levels = [job.Levels[0] with { Openings = [job.Levels[0].Openings[0] with { Kind = OpeningKind.EntranceDoor }] }] } : job,
        ["receptacle_of_the_owner"] = () => Room(RoomKind.Bedroom).With(r => r with { Placed = [OnWall("own", DeviceKind.DuplexReceptacle, 3, 4, 16) with { OwnerSupplied = true }] }),
        ["furnace_without_receptacle"] = () => Equipped(Room(RoomKind.Utility), EquipmentKind.Furnace),
        ["furnace_with_plain_receptacle"] = () => Equipped(Room(RoomKind.Utility, (DeviceKind.DuplexReceptacle, 1, ServedPlace.Room)), EquipmentKind.Furnace),
        ["furnace_with_gfci_receptacle"] = () => Equipped(Room(RoomKind.Utility, (DeviceKind.GfciReceptacle, 1, ServedPlace.Room)), EquipmentKind.Furnace),
        ["furnace_on_shared_circuit"] = () => Equipped(Room(RoomKind.Utility, (DeviceKind.DuplexReceptacle, 1, ServedPlace.Room)), EquipmentKind.Furnace, e => e with { OwnCircuit = false }),
        ["fastened_1500_va_beside_receptacles"] = () => Equipped(Room(RoomKind.Family, (DeviceKind.DuplexReceptacle, 2, ServedPlace.Room)), EquipmentKind.Other, e => e with { OwnCircuit = false, LoadVa = Power.FromVoltAmperes(1500), Connection = Connection.HardWired }),
        ["fastened_1100_va_beside_receptacles"] = () => Equipped(Room(RoomKind.Family, (DeviceKind.DuplexReceptacle, 2, ServedPlace.Room)), EquipmentKind.Other, e => e with { OwnCircuit = false, LoadVa = Power.FromVoltAmperes(1100), Connection = Connection.HardWired }),
        ["range_12_kw_on_30_a"] = () => Pinned(Equipped(Room(RoomKind.Kitchen), EquipmentKind.Range, e => e with { LoadVa = Power.FromVoltAmperes(12_000) }), 30),
        ["water_heater_4500_va_on_20_a"] = () => Pinned(Equipped(Room(RoomKind.Utility), EquipmentKind.WaterHeater, e => e with { LoadVa = Power.FromVoltAmperes(4500) }), 20),
        ["water_heater_4500_va_on_40_a"] = () => Pinned(Equipped(Room(RoomKind.Utility), EquipmentKind.WaterHeater, e => e with { LoadVa = Power.FromVoltAmperes(4500) }), 40),
        ["charger_9600_va_on_40_a"] = () => Pinned(Equipped(Room(RoomKind.Garage), EquipmentKind.EvCharger, e => e with { LoadVa = Power.FromVoltAmperes(9600) }), 40),
        ["charger_hard_wired"] = () => Equipped(Room(RoomKind.Garage), EquipmentKind.EvCharger),
        ["charger_by_receptacle"] = () => Equipped(Room(RoomKind.Garage), EquipmentKind.EvCharger, e => e with { Connection = Connection.Receptacle }),
        ["air_conditioner_without_nameplate"] = () => Equipped(Room(RoomKind.Utility), EquipmentKind.AirConditioner),
        ["air_conditioner_on_50_a_marked_40"] = () => Pinned(Equipped(Room(RoomKind.Utility), EquipmentKind.AirConditioner, e => e with { MinimumCircuitAmpacityA = Current.FromAmperes(24.9m), MaximumOvercurrentDeviceA = Current.FromAmperes(40) }), 50),
        ["air_conditioner_24.9_a_marked_40"] = () => Equipped(Room(RoomKind.Utility), EquipmentKind.AirConditioner, e => e with { MinimumCircuitAmpacityA = Current.FromAmperes(24.9m), MaximumOvercurrentDeviceA = Current.FromAmperes(40) }),
        ["air_conditioner_outdoors_undated"] = () => Equipped(Room(RoomKind.Outdoors), EquipmentKind.AirConditioner),
        ["inverter_heat_pump_outdoors_undated"] = () => Equipped(Room(RoomKind.Outdoors), EquipmentKind.HeatPump, e => e with { Inverter = true }),
        ["panel_in_closet"] = () => Room(RoomKind.Closet) is var job ? job with { Panels = [job.Panels[0] with { Existing = false }] } : job,
        ["panel_in_bathroom"] = () => Room(RoomKind.Bathroom) is var job ? job with { Panels = [job.Panels[0] with { Existing = false }] } : job,
        ["panel_in_passage_of_30_in"] = () => Room(RoomKind.Hall).With(r => r with { Size = new RectangleSize(Length.FromInches(30), Length.FromFeet(12)) }) is var job
            ? job with { Levels = [job.Levels[0] with { Openings = [] }], Panels = [job.Panels[0] with { Existing = false, Wall = new WallSpot(4, Length.FromFeet(6)) }] } : job,
        ["old_circuit_without_description"] = () => Room(RoomKind.Bedroom) is var job ? job with { Panels = [job.Panels[0] with { Circuits = [new ExistingCircuit { Id = "old", BreakerA = Current.FromAmperes(15) }] }] } : job,
        ["bedroom_without_alarm"] = () => Room(RoomKind.Bedroom),
        ["alarm_4_ft_from_range"] = () => Equipped(Room(RoomKind.Kitchen), EquipmentKind.Range, e => e with { Wall = new WallSpot(3, Length.FromFeet(8)) })
            .With(r => r with { Placed = [At("alarm", DeviceKind.SmokeAlarm, 8, 8, null)] }),
        ["small_appliance_circuit_with_a_light"] = () => Kitchen(null, (DeviceKind.DuplexReceptacle, 2, ServedPlace.Room), (DeviceKind.CeilingLight, 1, ServedPlace.Room)) is var job
            ? job with { Pins = new Pins { Circuits = [new PinnedCircuit { Id = "mixed", Panel = "P1", Outlets = ["R1/duplex_receptacle-1", "R1/ceiling_light-1"] }] } } : job,
        ["kitchen_with_one_receptacle"] = () => Kitchen(null, (DeviceKind.DuplexReceptacle, 1, ServedPlace.Room)),
        ["new_panel_of_an_unstated_service"] = () => Service(null),
        ["service_as_the_edition_has_it"] = () => Service(new ServiceWork()),
        ["service_cut_off_in_the_panel"] = () => Service(new ServiceWork { Disconnect = ServiceDisconnect.InPanel }),
        ["service_with_emergency_disconnect"] = () => Service(new ServiceWork { Disconnect = ServiceDisconnect.EmergencyOutdoors }),
        ["water_heater_without_disconnect"] = () => Apart(EquipmentKind.WaterHeater, DisconnectPlace.None),
        ["water_heater_with_lock"] = () => Apart(EquipmentKind.WaterHeater, DisconnectPlace.Lockable),
        ["water_heater_undisclosed"] = () => Apart(EquipmentKind.WaterHeater, null),
        ["water_heater_beside_panel"] = () => Equipped(Room(RoomKind.Utility), EquipmentKind.WaterHeater),
        ["air_conditioner_with_lock"] = () => Apart(EquipmentKind.AirConditioner, DisconnectPlace.Lockable),
        ["air_conditioner_with_disconnect"] = () => Apart(EquipmentKind.AirConditioner, DisconnectPlace.WithinSight),
        ["charger_without_disconnect"] = () => Apart(EquipmentKind.EvCharger, DisconnectPlace.None),
        ["charger_of_80_a_without_disconnect"] = () => Apart(EquipmentKind.EvCharger, DisconnectPlace.None, e => e with { LoadVa = Power.FromVoltAmperes(19_200) }),
        ["ceiling_light_in_bedroom"] = () => Room(RoomKind.Bedroom, (DeviceKind.CeilingLight, 1, ServedPlace.Room), (DeviceKind.SinglePoleSwitch, 1, ServedPlace.Room)),
        ["subpanel_400_ft_away"] = () => Subpanel(400),
        ["subpanel_30_ft_away"] = () => Subpanel(30),
        ["closet_light_20_in_from_wall"] = () => Closet(DeviceKind.CeilingLight),
        ["closet_recessed_light_20_in_from_wall"] = () => Closet(DeviceKind.RecessedLight),
        ["knob_and_tube"] = () => Old(UnknownTopic.KnobAndTube, null),
        ["outlets_without_ground"] = () => Old(UnknownTopic.Ungrounded, null),
        ["outlets_without_ground_with_allowance"] = () => Old(UnknownTopic.Ungrounded, 600),
        ["aluminium_circuits"] = () => Old(UnknownTopic.AluminiumWiring, null),
        ["shared_neutrals"] = () => Old(UnknownTopic.SharedNeutrals, null),
        ["remodel"] = () => Room(RoomKind.Bedroom),
        ["deck_without_door"] = Deck,
        ["garage_door_to_bedroom_floor"] = GarageBeside,
        ["stair_switched_below_alone"] = () => Stair(above: false, dimmer: false),
        ["stair_switched_on_both_floors"] = () => Stair(above: true, dimmer: false),
        ["stair_with_one_dimmer"] = () => Stair(above: true, dimmer: true),
        ["house_with_front_receptacle"] = () => House(back: false),
        ["house_with_front_and_back_receptacle"] = () => House(back: true),
    };

    /// <summary>The names.</summary>
    public static IEnumerable<string> Names => Known.Keys;

    /// <summary>The job of a situation under an edition.</summary>
    public static Job Of(string name, CodeEdition edition) => Known[name]() is var job ? job with { Code = job.Code with { Edition = edition } } : job;
}
