namespace Estimator.Engine.Rules;

/// <summary>How boxes are formed and how far the wiring search goes.</summary>
internal static class WiringSettings
{
    private static RuleTable Table => RuleTables.Of("wiring_settings");

    internal static RuleRow GangReach => Table["gang_reach"];

    internal static RuleRow MostGangs => Table["most_gangs"];

    internal static RuleRow OwnHousingEntries => Table["own_housing_entries"];

    internal static RuleRow MostEntries => Table["most_entries"];

    internal static RuleRow RoomOnCircuit => Table["room_on_circuit"];

    internal static RuleRow SearchPasses => Table["search_passes"];

    internal static RuleRow QuickSearchPasses => Table["quick_search_passes"];

    internal static RuleRow QuickCuttingSteps => Table["quick_cutting_steps"];

    internal static RuleRow CuttingSteps => Table["cutting_steps"];

    internal static RuleRow SmallApplianceCircuits => Table["small_appliance_circuits"];

    internal static RuleRow LowRunHeight => Table["low_run_height"];

    internal static RuleRow CornerStuds => Table["corner_studs"];

    internal static RuleRow OwnGroundFaultMost => Table["own_ground_fault_most"];

    internal static RuleRow SolveRounds => Table["solve_rounds"];
}
