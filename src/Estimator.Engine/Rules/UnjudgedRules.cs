using System.Collections.Immutable;

namespace Estimator.Engine.Rules;

/// <summary>Rules that the program lists and does not judge.</summary>
public static class UnjudgedRules
{
    /// <summary>The rules, with article and plain words.</summary>
    public static ImmutableArray<RuleRow> All => RuleTables.Of("unjudged").Rows;
}
