using Estimator.Engine.Measures;
using Estimator.Engine.Panels;

namespace Estimator.Engine.Rules;

/// <summary>Costs that the wiring is optimised on where the job keeps none; they are not prices.</summary>
internal static class PlanningCostDefaults
{
    private static RuleTable Table => RuleTables.Of("planning_costs");

    internal static RuleRow Bore => Table["bore"];

    internal static RuleRow FishPerFoot => Table["fish_per_foot"];

    internal static RuleRow GroundFaultReceptacle => Table["ground_fault_receptacle"];

    internal static RuleRow Hour => Table["hour"];

    internal static RuleRow PanelEntry => Table["panel_entry"];

    internal static RuleRow PullHoursPerFoot => Table["pull_hours_per_foot"];

    /// <summary>A foot of cable; a size or count that the table lacks is planned as the nearest thicker, or the thickest.</summary>
    internal static RuleRow CablePerFoot(WireSize size, int conductors)
    {
        var count = Math.Clamp(conductors, 2, 3);
        return WireSize.All.Where(s => s >= size).Select(s => $"cable-{s}-{count}").Where(Table.Has).Select(k => Table[k])
            .FirstOrDefault() ?? Table[$"cable-2-{count}"];
    }

    internal static RuleRow Box(int gangs) => Table[$"box-{Math.Clamp(gangs, 1, 4)}"];

    internal static RuleRow Breaker(int poles, Protection protection) => Table[$"breaker-{poles}-{protection switch
    {
        Protection.Plain => "plain",
        Protection.ArcFault => "arc_fault",
        Protection.GroundFault => "ground_fault",
        Protection.DualFunction => "dual_function",
        _ => throw new ArgumentOutOfRangeException(nameof(protection), protection, "No such protection."),
    }}"];
}
