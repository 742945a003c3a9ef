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
    public static ProtectionRule GroundFault(CodeEdition edition, OutletPlace place)
    {
        var table = RuleTables.Of("ground_fault_places");
        foreach (var key in GroundFaultKeys(place))
        {
            if (table[key].Flag(Column(edition)) && (place.Volts <= HighestVoltsToNeutral || key is "cooking_or_dryer" or "outdoor_outlet" || table["above_125v"].Flag(Column(edition))))
            {
                return Asked(table[key], edition);
            }
        }

        return None;
    }

    /// <summary>Whether an outlet or device must have arc-fault protection; 120 V only.</summary>
    public static ProtectionRule ArcFault(CodeEdition edition, OutletPlace place)
    {
        var unfinished = !place.Finished && (place.InBasement || place.Room is RoomKind.Basement);
        if (place.Volts > HighestVoltsToNeutral || unfinished)
        {
            return None;
        }

        var row = RuleTables.Of("arc_fault_places")[Words.Snake(place.Room)];
        return row.Flag(Column(edition)) ? Asked(row, edition) : None;
    }

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
        if (RoomKey(place) is { } room)
        {
            yield return room;
        }

        if (place.InBasement)
        {
            yield return place.Finished ? "basement_finished" : "basement_unfinished";
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
        new(true, row, row.Text("article"), edition is not CodeEdition.Nec2026 || !row.Flag("not_verified"));

    private static string Column(CodeEdition edition) => $"nec_{(int)edition}";
}
