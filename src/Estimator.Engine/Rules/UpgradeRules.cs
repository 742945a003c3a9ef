using System.Collections.Immutable;

namespace Estimator.Engine.Rules;

/// <summary>Sizes that a full panel is offered.</summary>
/// <remarks>Source: common practice, no source.</remarks>
public static class UpgradeRules
{
    private static RuleTable Table => RuleTables.Of("panel_upgrades");

    /// <summary>Largest circuit that is put on a tandem, amperes.</summary>
    public static RuleRow TandemTo => Table["tandem_to"];

    /// <summary>Circuits that make way for a feeder at most.</summary>
    public static RuleRow MostMoved => Table["most_moved"];

    /// <summary>Subpanels, the smallest first.</summary>
    public static ImmutableArray<RuleRow> Subpanels => [.. Table.Rows.Where(r => r.Key.StartsWith("subpanel-", StringComparison.Ordinal))];

    /// <summary>Panels that take another's place, the smallest first.</summary>
    public static ImmutableArray<RuleRow> Panels => [.. Table.Rows.Where(r => r.Key.StartsWith("panel-", StringComparison.Ordinal))];
}
