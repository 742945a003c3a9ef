using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Rules;

/// <summary>Conductor properties and ampacities.</summary>
/// <remarks>Source: NEC chapter 9 tables 8 and 9, table 310.16, 240.4(D), 334.80.</remarks>
public static class Conductors
{
    private static RuleTable Table => RuleTables.Of("conductors");

    /// <summary>The rows, thinnest first.</summary>
    public static ImmutableArray<RuleRow> All => Table.Rows;

    /// <summary>The row of a size.</summary>
    public static RuleRow For(WireSize size) => Table[size.ToString()];

    /// <summary>Whether the table has the size.</summary>
    public static bool Has(WireSize size) => Table.Has(size.ToString());
}
