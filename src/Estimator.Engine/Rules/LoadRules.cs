namespace Estimator.Engine.Rules;

/// <summary>Figures of the dwelling load calculation.</summary>
/// <remarks>Source: NEC article 220, in 2026 article 120.</remarks>
public static class LoadRules
{
    private const int MovedIn = 2026;

    private static RuleTable Table => RuleTables.Of("load_rules");

    /// <summary>A place in the article on load calculations, which 2026 renumbered.</summary>
    public static string Article(int year, string place) => $"{(year >= MovedIn ? 120 : 220)}{place}";

    /// <summary>General lighting, VA for each square foot, by edition year.</summary>
    public static RuleRow UnitLoad(int year) => Table[year >= MovedIn ? "unit_load_2026" : "unit_load"];

    /// <summary>General lighting when branch circuits are counted.</summary>
    public static RuleRow UnitLoadForCircuits => Table["unit_load_circuits"];

    /// <summary>Each small-appliance circuit.</summary>
    public static RuleRow SmallAppliance => Table["small_appliance"];

    /// <summary>Each laundry circuit.</summary>
    public static RuleRow Laundry => Table["laundry"];

    /// <summary>Fastened appliances from which the reduction holds.</summary>
    public static RuleRow FastenedCount => Table["fastened_count"];

    /// <summary>Fastened appliances counted at, percent.</summary>
    public static RuleRow FastenedPercent => Table["fastened_percent"];

    /// <summary>Each dryer at least.</summary>
    public static RuleRow DryerLeast => Table["dryer_least"];

    /// <summary>Each EV supply equipment at least.</summary>
    public static RuleRow EvseLeast => Table["evse_least"];

    /// <summary>Column A from, kilowatts.</summary>
    public static RuleRow CookingFrom => Table["cooking_from"];

    /// <summary>Column B from, kilowatts.</summary>
    public static RuleRow CookingBFrom => Table["cooking_b_from"];

    /// <summary>Column C over, kilowatts.</summary>
    public static RuleRow CookingCFrom => Table["cooking_c_from"];

    /// <summary>Column C without a raise to, kilowatts.</summary>
    public static RuleRow CookingCTo => Table["cooking_c_to"];

    /// <summary>Raise of column C for each kilowatt, percent.</summary>
    public static RuleRow CookingRaisePercent => Table["cooking_raise_percent"];

    /// <summary>Cooking and dryers on the neutral, percent.</summary>
    public static RuleRow NeutralPercent => Table["neutral_percent"];

    /// <summary>Unbalance above which a further reduction holds.</summary>
    public static RuleRow NeutralOver => Table["neutral_over"];

    /// <summary>One-family service at least.</summary>
    public static RuleRow ServiceLeast => Table["service_least"];

    /// <summary>Space heat under four controls, percent.</summary>
    public static RuleRow HeatFewPercent => Table["heat_few_percent"];

    /// <summary>Space heat of four or more controls, percent.</summary>
    public static RuleRow HeatManyPercent => Table["heat_many_percent"];

    /// <summary>Controls from which the lower share holds.</summary>
    public static RuleRow HeatManyCount => Table["heat_many_count"];

    /// <summary>Supplementary heat beside a compressor, percent.</summary>
    public static RuleRow SupplementaryHeatPercent => Table["supplementary_heat_percent"];

    /// <summary>Measured demand counts at, percent.</summary>
    public static RuleRow MeasuredPercent => Table["measured_percent"];

    /// <summary>Fraction of an ampere from which a load rounds up.</summary>
    public static RuleRow AmpereFraction => Table["ampere_fraction"];

    /// <summary>Share of the rating that service conductors carry, percent.</summary>
    public static RuleRow ServiceConductorPercent => Table["service_conductor_percent"];

    /// <summary>Largest motor counts further, percent.</summary>
    public static RuleRow LargestMotorPercent => Table["largest_motor_percent"];

    /// <summary>Motor or cooling load that is not the larger counts further, percent.</summary>
    public static RuleRow NoncoincidentMotorPercent => Table["noncoincident_motor_percent"];

    /// <summary>Continuous load of a feeder counts further, percent.</summary>
    public static RuleRow ContinuousMorePercent => Table["continuous_more_percent"];

    /// <summary>Largest portable load, percent of the circuit.</summary>
    public static RuleRow PortablePercent => Table["portable_percent"];

    /// <summary>Fastened load beside others, percent of the circuit.</summary>
    public static RuleRow FastenedCircuitPercent => Table["fastened_circuit_percent"];

    /// <summary>Each yoke outside dwellings, volt-amperes.</summary>
    public static RuleRow YokeVa => Table["yoke_va"];
}
