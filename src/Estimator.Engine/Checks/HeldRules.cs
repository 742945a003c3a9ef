using System.Collections.Immutable;
using Estimator.Engine.Findings;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>The rules that were judged and are held, so that silence about a rule is never taken for a judgement.</summary>
/// <remarks>A rule that applies to nothing in the house, that the edition does not have, that wants for input, or that a local amendment waives, is not among them.</remarks>
public static class HeldRules
{
    /// <summary>The rules, in the order of the table.</summary>
    /// <param name="applied">Codes of the rules that applied to something.</param>
    /// <param name="findings">What the checks found.</param>
    public static ImmutableArray<RuleRow> Of(ImmutableHashSet<string> applied, ImmutableArray<Finding> findings)
    {
        var found = findings.Select(f => f.Code).ToHashSet(StringComparer.Ordinal);
        return [.. JudgedRules.All.Where(r => applied.Contains(r.Key) && !found.Contains(r.Key))];
    }
}
