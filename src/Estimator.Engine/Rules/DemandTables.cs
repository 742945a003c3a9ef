using System.Collections.Immutable;

namespace Estimator.Engine.Rules;

/// <summary>Demand factors by count and by block.</summary>
/// <remarks>Source: NEC tables 220.54, 220.55, 220.42 (2023: 220.45), 220.82, 220.83; 120.82 in 2026.</remarks>
public static class DemandTables
{
    private const int MovedIn = 2026;

    /// <summary>The row for a number of cooking appliances.</summary>
    public static RuleRow Cooking(int count) => ByCount("cooking_demand", count);

    /// <summary>The row for a number of dryers.</summary>
    public static RuleRow Dryers(int count) => ByCount("dryer_demand", count);

    /// <summary>Blocks of the lighting demand.</summary>
    public static ImmutableArray<RuleRow> Lighting => RuleTables.Of("lighting_demand").Rows;

    /// <summary>Blocks of the optional method, by edition year.</summary>
    public static ImmutableArray<RuleRow> Optional(int year) => RuleTables.Of(year >= MovedIn ? "optional_demand_2026" : "optional_demand_2017").Rows;

    /// <summary>Blocks of the existing-dwelling method.</summary>
    public static ImmutableArray<RuleRow> Existing => RuleTables.Of("existing_demand").Rows;

    private static RuleRow ByCount(string table, int count) => RuleTables.Of(table).Rows
        .First(r => r.Number("from_count") <= count && (!r.Has("to_count") || count <= r.Number("to_count")));
}
