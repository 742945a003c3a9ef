using Estimator.Engine.Explanations;

namespace Estimator.Engine.Pricing.Ranges;

/// <summary>Something that may turn out otherwise than the price has it, alone.</summary>
/// <param name="Key">Stable key of its row among the range rules.</param>
/// <param name="Label">What it is.</param>
/// <param name="Share">The share of direct cost that it acts on, percent.</param>
/// <param name="Less">What the price falls by where it alone turns out well; not below zero.</param>
/// <param name="More">What the price rises by where it alone turns out badly; not below zero.</param>
public sealed record RangeFactor(string Key, string Label, Fact Share, Fact Less, Fact More)
{
    /// <summary>How far it moves the price from end to end.</summary>
    public decimal Swing => Less.Value + More.Value;
}
