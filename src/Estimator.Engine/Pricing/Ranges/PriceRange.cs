using System.Collections.Immutable;
using Estimator.Engine.Explanations;

namespace Estimator.Engine.Pricing.Ranges;

/// <summary>What the price would be, were it known today how things turn out: many draws of it.</summary>
/// <remarks>
/// A draw needs no contingency, which is the money for what is not known; overhead and profit keep their shares, so it moves as direct cost does. Source: GAO-20-195G, step 9, which sets
/// contingency by the draws of an estimate without one.
/// </remarks>
public sealed record PriceRange
{
    /// <summary>How far the low end lies below the price, percent; not below zero.</summary>
    public required Fact BelowPercent { get; init; }

    /// <summary>How far the high end lies above the price, percent; not below zero.</summary>
    public required Fact AbovePercent { get; init; }

    /// <summary>What half of the draws stay below.</summary>
    public required Fact Middle { get; init; }

    /// <summary>The share of the draws that come to no more than the price, percent.</summary>
    public required Fact WithinPrice { get; init; }

    /// <summary>How many draws.</summary>
    public required Fact Draws { get; init; }

    /// <summary>The histogram, from the least price.</summary>
    public required ImmutableArray<RangeBin> Bins { get; init; }

    /// <summary>What moves the price, the most first.</summary>
    public required ImmutableArray<RangeFactor> Factors { get; init; }
}
