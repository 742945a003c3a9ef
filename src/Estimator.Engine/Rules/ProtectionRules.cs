using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Rules;

/// <summary>Where ground-fault and arc-fault protection is asked for, by edition.</summary>
/// <remarks>Source: NEC 210.8 and 210.12.</remarks>
public static class ProtectionRules
{
    private const int HighestVoltsToNeutral = 125;

    private static readonly ProtectionRule None = new(false, null, "", true);

    /// <summary>Reach of a sink, tub or shower.</summary>
    public static Length ReachOfWater => RuleTables.Of("ground_fault_places")["reach_of_water"].Feet();

    /// <summary>Whether an outlet must have ground-fault protection.</summary>
    public static ProtectionRule GroundFault(CodeBasis code, OutletPlace place)
    {
        var (edition, table) = (code.Edition, RuleTables.Of("ground_fault_places"));
        foreach (var key in GroundFaultKeys(place))
        {
            if (table[key].Flag(Column(edition)) && !Excused(code, key, place) && (place.Volts <= HighestVoltsToNeutral || key is "cooking_or_dryer" or "outdoor_outlet" or "ev_receptacle" || table["above_125v"].Flag(Column(edition))))
            {
                return Asked(table[key], edition);
            }
        }

        return None;
    }

    /// <summary>Whether an outlet or device must have arc-fault protection; 120 V only.</summary>
    public static ProtectionRule ArcFault(CodeBasis code, OutletPlace place)
    {
        var edition = code.Edition;
        var unfinished = !place.Finished && (place.InBasement || place.Room is RoomKind.Basement);
        if (place.Volts > HighestVoltsToNeutral || unfinished || place.Accessory)
        {
            return None;
        }

        var row = RuleTables.Of("arc_fault_places")[Words.Snake(place.Room)];
        return row.Flag(Column(edition)) ? Asked(row, edition) : None;
    }

    /// <summary>The day before which a permit excuses equipment outdoors from ground-fault protection in an edition; null for what is never excused.</summary>
    /// <remarks>Listed heating and cooling equipment in 2023 and 2026, inverter units in 2020. Source: NEC 210.8(F) and its amendments.</remarks>
    public static DateOnly? ExcusedBefore(CodeEdition edition, OutletPlace place)
    {
        if (place.Room is not RoomKind.Outdoors || place.Equipment is not (EquipmentKind.AirConditioner or EquipmentKind.HeatPump))
        {
            return null;
        }

        var row = RuleTables.Of("ground_fault_limits")["excused_before"];
        var column = Column(edition);
        return row.Has(column) && (place.Inverter || edition is not CodeEdition.Nec2020)
            ? DateOnly.ParseExact(row.Text(column), "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)
            : null;
    }

    private static bool Excused(CodeBasis code, string key, OutletPlace place) => key switch
    {
        "outdoor_outlet" => Above("outdoor_amperes", code.Edition, place) || (code.PermitDate is { } day && ExcusedBefore(code.Edition, place) is { } before && day < before),
        "cooking_or_dryer" => Above("appliance_amperes", code.Edition, place),
        _ => false,
    };

    private static bool Above(string key, CodeEdition edition, OutletPlace place) => RuleTables.Of("ground_fault_limits")[key] is var row
        && row.Has(Column(edition)) && place.DeviceA > row.Number(Column(edition));

    private static IEnumerable<string> GroundFaultKeys(OutletPlace place) =>
        EquipmentKeys(place).Concat(place.IsReceptacle ? ReceptacleKeys(place) : place.Room is RoomKind.Crawl ? ["crawl_light"] : []);

    private static IEnumerable<string> EquipmentKeys(OutletPlace place)
    {
        if (place.Room is RoomKind.Outdoors && place.Equipment is not null)
        {
            yield return "outdoor_outlet";
        }

        switch (place.Equipment)
        {
            case EquipmentKind.Dishwasher:
                yield return "dishwasher";
                break;
            case EquipmentKind.EvCharger when place.IsReceptacle:
                yield return "ev_receptacle";
                break;
            case EquipmentKind.SumpPump:
                yield return "sump_pump";
                break;
            case EquipmentKind.Range or EquipmentKind.Oven or EquipmentKind.Cooktop or EquipmentKind.Dryer or EquipmentKind.Microwave:
                yield return "cooking_or_dryer";
                break;
            default:
                break;
        }
    }

    private static IEnumerable<string> ReceptacleKeys(OutletPlace place)
    {
        if (place.Accessory)
        {
            yield return "accessory_building";
        }

        if (RoomKey(place) is { } room)
        {
            yield return room;
        }

        if (place.InBasement)
        {
            yield return place.Finished ? "basement_finished" : "basement_unfinished";
        }

        if (place.ServesFood)
        {
            yield return "food_area";
        }

        if (place.WithinSixFeetOfSink)
        {
            yield return "sink";
        }

        if (place.WithinSixFeetOfTub)
        {
            yield return "tub";
        }
    }

    private static string? RoomKey(OutletPlace place) => (place.Room, place.Serves) switch
    {
        (RoomKind.Bathroom, _) => "bathroom",
        (RoomKind.Garage, _) => "garage",
        (RoomKind.Outdoors, _) or (_, ServedPlace.Outdoors) => "outdoors",
        (RoomKind.Crawl, _) => "crawl",
        (RoomKind.Basement, _) => place.Finished ? "basement_finished" : "basement_unfinished",
        (RoomKind.Laundry, _) => "laundry",
        (RoomKind.Kitchen, ServedPlace.Counter or ServedPlace.Island) => "kitchen_counter",
        (RoomKind.Kitchen, _) => "kitchen_other",
        _ => null,
    };

    private static ProtectionRule Asked(RuleRow row, CodeEdition edition) =>
        new(true, row, row.Text(row.Has($"article_{(int)edition}") ? $"article_{(int)edition}" : "article"), edition is not CodeEdition.Nec2026 || !row.Flag("not_verified"));

    private static string Column(CodeEdition edition) => $"nec_{(int)edition}";
}
