using System.Collections.Immutable;

namespace Estimator.Engine.Rules;

/// <summary>Rules that the program judges; a row's key is the code of the finding where a rule is not held.</summary>
public static class JudgedRules
{
    /// <summary>The rules, with article and plain words.</summary>
    public static ImmutableArray<RuleRow> All => RuleTables.Of("judged").Rows;
}
