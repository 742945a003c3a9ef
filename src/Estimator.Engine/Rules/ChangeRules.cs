namespace Estimator.Engine.Rules;

/// <summary>What goes back to the customer where a job that was sold shrinks.</summary>
public static class ChangeRules
{
    private static RuleTable Table => RuleTables.Of("change_rules");

    /// <summary>Share of the cost of material that is given back while it is not built in, percent.</summary>
    public static RuleRow ReturnedMaterialPercent => Table["returned_material_percent"];

    /// <summary>Share of the cost of material that is given back once it is built in, percent.</summary>
    public static RuleRow BuiltMaterialPercent => Table["built_material_percent"];

    /// <summary>Share of the hours that is given back where they were not worked, percent.</summary>
    public static RuleRow ReturnedHoursPercent => Table["returned_hours_percent"];

    /// <summary>Hours of taking out as a share of those of putting in, percent.</summary>
    public static RuleRow RemovalPercent => Table["removal_percent"];
}
