namespace Estimator.Engine.Rules;

/// <summary>How feeders of panels are made.</summary>
public static class FeederRules
{
    private static RuleTable Table => RuleTables.Of("feeder_rules");

    /// <summary>Largest feeder in the job's own copper cable, amperes.</summary>
    public static RuleRow CopperTo => Table["copper_to"];

    /// <summary>Size that branch cable is not sold in.</summary>
    public static RuleRow NotSold => Table["not_sold"];

    /// <summary>Insulated conductors of a feeder.</summary>
    public static RuleRow Conductors => Table["conductors"];

    /// <summary>Resistance of aluminium as a multiple of copper's.</summary>
    public static RuleRow AluminiumResistance => Table["aluminium_resistance"];

    /// <summary>Voltage drop of a feeder that is accepted, percent.</summary>
    public static RuleRow DropPercent => Table["drop_percent"];
}
