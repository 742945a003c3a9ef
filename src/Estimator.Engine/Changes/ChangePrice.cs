using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Pricing;

namespace Estimator.Engine.Changes;

/// <summary>What a change of a job that was sold costs, or gives back.</summary>
public sealed record ChangePrice
{
    /// <summary>What comes and what goes, item by item.</summary>
    public required ImmutableArray<ChangeLine> Lines { get; init; }

    /// <summary>From the lines to the price: added, removed, overhead, profit. They add up to the price.</summary>
    public required ImmutableArray<BidLine> Sums { get; init; }

    /// <summary>The price of the change, to the cent; negative where the contract comes down.</summary>
    public required Fact Price { get; init; }

    /// <summary>Hours of work that the change brings, taking out counted; negative where it saves some.</summary>
    public required Fact Hours { get; init; }

    /// <summary>Working days of the crew that the change adds, begun ones counted; never negative.</summary>
    public required Fact Days { get; init; }

    /// <summary>Why it is more than a unit price or two, in sentences: a new circuit, a panel, a larger box.</summary>
    public required ImmutableArray<string> Reasons { get; init; }

    /// <summary>The explanations of the figures: the page of the change alone.</summary>
    public required ExplanationBook Book { get; init; }
}
