using Estimator.Engine.House;

namespace Estimator.Engine.Rules;

/// <summary>What is usually set aside for old wiring until it has been looked at.</summary>
/// <remarks>Source: invented round figures; the user states his own.</remarks>
public static class OldWiringAllowances
{
    /// <summary>The row of a topic; null for one that is not about old wiring.</summary>
    public static RuleRow? For(UnknownTopic topic) => RuleTables.Of("old_wiring") is var table && table.Has(Words.Snake(topic)) ? table[Words.Snake(topic)] : null;
}
