using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Labor;
using Estimator.Engine.Pricing.Ranges;

namespace Estimator.Engine.Pricing;

/// <summary>From cost to price.</summary>
public sealed record Bid
{
    /// <summary>Direct cost, line by line.</summary>
    public required ImmutableArray<BidLine> DirectCost { get; init; }

    /// <summary>What is added to direct cost, line by line.</summary>
    public required ImmutableArray<BidLine> Additions { get; init; }

    /// <summary>Sum of the direct cost.</summary>
    public required Fact DirectTotal { get; init; }

    /// <summary>The price.</summary>
    public required Fact Price { get; init; }

    /// <summary>The price without sales tax that is charged on; the price itself where none is.</summary>
    public required Fact PriceBeforeTax { get; init; }

    /// <summary>Low end of the range.</summary>
    public required Fact Low { get; init; }

    /// <summary>High end of the range.</summary>
    public required Fact High { get; init; }

    /// <summary>How the range was drawn, and what makes it as wide as it is.</summary>
    public required PriceRange Range { get; init; }

    /// <summary>Profit as a share of cost, percent.</summary>
    public required Fact MarkupPercent { get; init; }

    /// <summary>Profit as a share of price, percent.</summary>
    public required Fact MarginPercent { get; init; }

    /// <summary>Loaded cost of an hour of the crew.</summary>
    public required Fact HourCost { get; init; }

    /// <summary>Hours that are paid for: work, and driving, setting up and lost time, as a share or as hours.</summary>
    public required Fact PaidHours { get; init; }

    /// <summary>Who does the work.</summary>
    public required CrewRate Crew { get; init; }

    /// <summary>Price for each opening.</summary>
    public required Fact PricePerOpening { get; init; }

    /// <summary>Price for each square foot of floor.</summary>
    public required Fact PricePerSquareFoot { get; init; }

    /// <summary>What the price takes in, leaves out and rests on; a sentence that the user left out has no text.</summary>
    public required ImmutableArray<ScopeLine> Scope { get; init; }

    /// <summary>What the price takes in.</summary>
    public ImmutableArray<string> Inclusions => Sentences(ScopePart.Included);

    /// <summary>What it leaves out.</summary>
    public ImmutableArray<string> Exclusions => Sentences(ScopePart.Excluded);

    /// <summary>What it rests on.</summary>
    public ImmutableArray<string> Assumptions => Sentences(ScopePart.Assumed);

    /// <summary>How long the bid stands, in days.</summary>
    public required int ValidDays { get; init; }

    /// <summary>Page of the explanation book.</summary>
    public required ExplanationPage Page { get; init; }

    private ImmutableArray<string> Sentences(ScopePart part) => [.. Scope.Where(l => l.Part == part && l.Text.Length > 0).Select(l => l.Text)];
}
