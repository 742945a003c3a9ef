using Estimator.Engine.House;

namespace Estimator.Engine.Rules;

/// <summary>Distances that the checks measure, and the usual sizes of fixtures of which only the middle is known.</summary>
public static class PlacingLimits
{
    private static RuleTable Table => RuleTables.Of("placing_limits");

    /// <summary>Receptacle from heating or cooling equipment at most, feet.</summary>
    public static RuleRow ServiceReceptacleReach => Table["service_receptacle_reach"];

    /// <summary>Receptacle from the edge of a tub or shower at least, from 2020, inches.</summary>
    public static RuleRow TubReach => Table["tub_reach"];

    /// <summary>Height of the zone of a tub or shower, from 2020, inches.</summary>
    public static RuleRow TubZoneHeight => Table["tub_zone_height"];

    /// <summary>Counter receptacle above the surface at most, inches.</summary>
    public static RuleRow CounterAbove => Table["counter_above"];

    /// <summary>Counter receptacle below the surface at most, 2017 and 2020, inches.</summary>
    public static RuleRow CounterBelow2020 => Table["counter_below_2020"];

    /// <summary>Receptacle below a countertop at least, from 2026, inches.</summary>
    public static RuleRow BelowCounter2026 => Table["below_counter_2026"];

    /// <summary>Handle of a switch above the floor at most, inches.</summary>
    public static RuleRow SwitchHighest => Table["switch_highest"];

    /// <summary>Outdoor receptacle above grade at most, inches.</summary>
    public static RuleRow OutdoorHighest => Table["outdoor_highest"];

    /// <summary>Receptacles above this need not be tamper resistant, inches.</summary>
    public static RuleRow TamperBelow => Table["tamper_below"];

    /// <summary>Free conductor at each box, inches.</summary>
    public static RuleRow FreeConductor => Table["free_conductor"];

    /// <summary>Depth of the working space, inches.</summary>
    public static RuleRow WorkingDepth => Table["working_depth"];

    /// <summary>Width of the working space, inches.</summary>
    public static RuleRow WorkingWidth => Table["working_width"];

    /// <summary>Height of the working space, inches.</summary>
    public static RuleRow WorkingHeight => Table["working_height"];

    /// <summary>Range from which the least circuit holds, volt-amperes.</summary>
    public static RuleRow RangeFrom => Table["range_from"];

    /// <summary>Circuit of such a range at least, amperes.</summary>
    public static RuleRow RangeLeast => Table["range_least"];

    /// <summary>Device of an unmarked appliance of small current, amperes.</summary>
    public static RuleRow ApplianceSmall => Table["appliance_small"];

    /// <summary>Current up to which that device serves, amperes.</summary>
    public static RuleRow ApplianceSmallTo => Table["appliance_small_to"];

    /// <summary>Smoke alarm from the door of a bath at least, inches.</summary>
    public static RuleRow AlarmBath => Table["alarm_bath"];

    /// <summary>Photoelectric smoke alarm from a cooking appliance at least, feet.</summary>
    public static RuleRow AlarmCooking => Table["alarm_cooking"];

    /// <summary>Disconnect in sight at most, feet.</summary>
    public static RuleRow Sight => Table["sight"];

    /// <summary>Vehicle supply equipment above this has a disconnect in every edition, amperes.</summary>
    public static RuleRow ChargerDisconnect => Table["charger_disconnect"];

    /// <summary>Surface light of a closet from storage space at least, inches.</summary>
    public static RuleRow ClosetSurface => Table["closet_surface"];

    /// <summary>Recessed light of a closet from storage space at least, inches.</summary>
    public static RuleRow ClosetRecessed => Table["closet_recessed"];

    /// <summary>Depth of a closet shelf.</summary>
    public static RuleRow ClosetShelf => Table["closet_shelf"];

    /// <summary>Short side of a tub or shower.</summary>
    public static RuleRow ShortSide(FixtureKind kind) => Table[kind is FixtureKind.Bathtub ? "bathtub_short" : "shower_short"];

    /// <summary>Long side of a tub or shower.</summary>
    public static RuleRow LongSide(FixtureKind kind) => Table[kind is FixtureKind.Bathtub ? "bathtub_long" : "shower_long"];

    /// <summary>Rim of a tub above the floor.</summary>
    public static RuleRow TubRim => Table["tub_rim"];

    /// <summary>Basin, from its middle to its outside edge.</summary>
    public static RuleRow BasinHalf => Table["basin_half"];

    /// <summary>Countertop above the floor.</summary>
    public static RuleRow CounterTop => Table["counter_top"];
}
