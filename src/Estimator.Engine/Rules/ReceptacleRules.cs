namespace Estimator.Engine.Rules;

/// <summary>Where receptacles must be.</summary>
/// <remarks>Source: NEC 210.52, by edition where it differs.</remarks>
public static class ReceptacleRules
{
    private static RuleTable Table => RuleTables.Of("receptacle_rules");

    /// <summary>Wall space that counts, inches.</summary>
    public static RuleRow WallSpaceLeast => Table["wall_space_least"];

    /// <summary>Farthest between wall receptacles, inches.</summary>
    public static RuleRow WallBetween => Table["wall_between"];

    /// <summary>Counter that counts, inches.</summary>
    public static RuleRow CounterLeast => Table["counter_least"];

    /// <summary>Farthest between counter receptacles, inches.</summary>
    public static RuleRow CounterBetween => Table["counter_between"];

    /// <summary>Long side of an island that counts in 2017, inches.</summary>
    public static RuleRow IslandLong2017 => Table["island_long_2017"];

    /// <summary>Short side of an island that counts in 2017, inches.</summary>
    public static RuleRow IslandWide2017 => Table["island_wide_2017"];

    /// <summary>Area for an island's first receptacle in 2020, square feet.</summary>
    public static RuleRow IslandFirst2020 => Table["island_first_2020"];

    /// <summary>Area for each further receptacle of an island in 2020, square feet.</summary>
    public static RuleRow IslandMore2020 => Table["island_more_2020"];

    /// <summary>Hallway that needs a receptacle, inches.</summary>
    public static RuleRow HallwayLeast => Table["hallway_least"];

    /// <summary>Foyer that needs receptacles, square feet.</summary>
    public static RuleRow FoyerArea => Table["foyer_area"];

    /// <summary>Wall space of a foyer that needs one, inches.</summary>
    public static RuleRow FoyerWall => Table["foyer_wall"];

    /// <summary>Farthest from a basin, inches.</summary>
    public static RuleRow BasinReach => Table["basin_reach"];

    /// <summary>Receptacles for each vehicle bay.</summary>
    public static RuleRow GarageBay => Table["garage_bay"];

    /// <summary>Receptacles for each accessory building with power.</summary>
    public static RuleRow AccessoryBuilding => Table["accessory_building"];

    /// <summary>Receptacles for each unfinished basement portion.</summary>
    public static RuleRow BasementPortion => Table["basement_portion"];

    /// <summary>Receptacles of a balcony, deck or porch.</summary>
    public static RuleRow Deck => Table["deck"];

    /// <summary>Outdoor receptacles.</summary>
    public static RuleRow Outdoor => Table["outdoor"];

    /// <summary>Laundry receptacles.</summary>
    public static RuleRow Laundry => Table["laundry"];

    /// <summary>Garage floor taken for one bay, square feet.</summary>
    public static RuleRow GarageBayArea => Table["garage_bay_area"];

    /// <summary>Share of a kitchen's walls taken for counters, percent.</summary>
    public static RuleRow CounterShare => Table["counter_share"];
}
