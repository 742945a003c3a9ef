using System.Collections.Immutable;
namespace Estimator.Engine.Rules;

/// <summary>Practice that the standards do not state; each value is a start that a firm changes.</summary>
/// <remarks>Source: common practice, no source, where a row names none.</remarks>
public static class PracticeDefaults
{
    private static RuleTable Table => RuleTables.Of("practice");

    /// <summary>Cable left at a single-gang or ceiling box, inches.</summary>
    public static RuleRow BoxTail => Table["box_tail"];

    /// <summary>Cable left at a multi-gang box, inches.</summary>
    public static RuleRow MultiGangTail => Table["multi_gang_tail"];

    /// <summary>Cable left at the panel, inches.</summary>
    public static RuleRow PanelTail => Table["panel_tail"];

    /// <summary>Cable left at an appliance outlet, inches.</summary>
    public static RuleRow ApplianceTail => Table["appliance_tail"];

    /// <summary>Wall plates between a wall and the joists above, inches.</summary>
    public static RuleRow PlateThickness => Table["plate_thickness"];

    /// <summary>Stud spacing, inches.</summary>
    public static RuleRow StudSpacing => Table["stud_spacing"];

    /// <summary>Stud depth, inches.</summary>
    public static RuleRow StudDepth => Table["stud_depth"];

    /// <summary>Joist spacing, inches.</summary>
    public static RuleRow JoistSpacing => Table["joist_spacing"];

    /// <summary>Top of a door opening, inches.</summary>
    public static RuleRow DoorHead => Table["door_head"];

    /// <summary>Slack on a path, percent.</summary>
    public static RuleRow RunSlackPercent => Table["run_slack_percent"];

    /// <summary>Tolerance of a piece of cable, percent of its run.</summary>
    public static RuleRow CutTolerancePercent => Table["cut_tolerance_percent"];

    /// <summary>From how much of a category, in pieces or feet, something is bought beyond the takeoff.</summary>
    public static RuleRow SpareFrom => Table["spare_from"];

    /// <summary>The categories of which something may be bought beyond the takeoff.</summary>
    public static ImmutableArray<string> SpareCategories => [.. Table["spare_categories"].Text().Split(' ')];

    /// <summary>Cable lost at a cut, inches.</summary>
    public static RuleRow CutTrim => Table["cut_trim"];

    /// <summary>End of a coil that is worth keeping, inches.</summary>
    public static RuleRow UsefulEnd => Table["useful_end"];

    /// <summary>Outlets on a 20 A circuit.</summary>
    public static RuleRow OutletsPer20A => Table["outlets_per_20a"];

    /// <summary>Outlets on a 15 A circuit.</summary>
    public static RuleRow OutletsPer15A => Table["outlets_per_15a"];

    /// <summary>Share of a circuit that lamps may take, percent.</summary>
    public static RuleRow LightingLoadShare => Table["lighting_load_share"];

    /// <summary>Height of wall receptacles, inches.</summary>
    public static RuleRow ReceptacleHeight => Table["receptacle_height"];

    /// <summary>Height of switches, inches.</summary>
    public static RuleRow SwitchHeight => Table["switch_height"];

    /// <summary>Least distance of a box centre from the ceiling of a low room, inches.</summary>
    public static RuleRow BelowCeiling => Table["below_ceiling"];

    /// <summary>Distance from the ceiling down to an alarm or exhaust fan on a wall, inches.</summary>
    public static RuleRow HighOnWall => Table["high_on_wall"];

    /// <summary>Height of counter receptacles, inches.</summary>
    public static RuleRow CounterHeight => Table["counter_height"];

    /// <summary>Height of receptacles by a basin, inches.</summary>
    public static RuleRow BasinHeight => Table["basin_height"];

    /// <summary>Height of laundry and utility receptacles, inches.</summary>
    public static RuleRow LaundryHeight => Table["laundry_height"];

    /// <summary>Height of garage receptacles, inches.</summary>
    public static RuleRow GarageHeight => Table["garage_height"];

    /// <summary>Height of outdoor receptacles, inches.</summary>
    public static RuleRow OutdoorReceptacleHeight => Table["outdoor_receptacle_height"];

    /// <summary>Height of a light over a vanity, inches.</summary>
    public static RuleRow VanityLightHeight => Table["vanity_light_height"];

    /// <summary>Height of wall lights, inches.</summary>
    public static RuleRow WallLightHeight => Table["wall_light_height"];

    /// <summary>Height of a panel's middle, inches.</summary>
    public static RuleRow PanelHeight => Table["panel_height"];

    /// <summary>Widest strip between outlines that is a wall, inches.</summary>
    public static RuleRow MaximumWallThickness => Table["maximum_wall_thickness"];

    /// <summary>Floor area whose rooms share general circuits, square feet.</summary>
    public static RuleRow ZoneArea => Table["zone_area"];

    /// <summary>Share of the breaker at which voltage drop is judged, percent.</summary>
    public static RuleRow VoltageDropLoadPercent => Table["voltage_drop_load_percent"];

    /// <summary>Voltage drop of a branch circuit that is accepted, percent.</summary>
    public static RuleRow BranchVoltageDropPercent => Table["branch_voltage_drop_percent"];

    /// <summary>Voltage drop from which a thicker conductor is taken, percent.</summary>
    public static RuleRow ThickerConductorDropPercent => Table["thicker_conductor_drop_percent"];

    /// <summary>Switch box centre from the door jamb, inches.</summary>
    public static RuleRow SwitchFromJamb => Table["switch_from_jamb"];

    /// <summary>Hole bored for one or two cables, inches.</summary>
    public static RuleRow StandardHole => Table["standard_hole"];
}
