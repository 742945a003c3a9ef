using Estimator.Engine.Measures;

namespace Estimator.Engine.Rules;

/// <summary>Volume allowance for each conductor in a box.</summary>
/// <remarks>Source: NEC table 314.16(B), in 2023 table 314.16(B)(1).</remarks>
public static class BoxAllowances
{
    /// <summary>The column that holds cubic inches.</summary>
    public const string CubicInches = "volume_in3";

    /// <summary>The row of a size, 18 to 6 AWG; thicker conductors are sized by 314.28 and counted here as 6 AWG.</summary>
    public static RuleRow For(WireSize size) => RuleTables.Of("box_allowances") is var table && table.Has(size.ToString()) ? table[size.ToString()] : table["6"];
}
