using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.Upgrades;

namespace Estimator.Engine.Alternates;

/// <summary>What alternates do to a job that is worked out whole with them.</summary>
public sealed record PricedAlternate
{
    /// <summary>Ids of the alternates.</summary>
    public required ImmutableArray<string> Ids { get; init; }

    /// <summary>The estimate with them.</summary>
    public required JobEstimate After { get; init; }

    /// <summary>What the price rises by; below zero where it falls.</summary>
    public required Fact Price { get; init; }

    /// <summary>What the hours rise by.</summary>
    public required Fact Hours { get; init; }

    /// <summary>What the takeoff gains and loses.</summary>
    public required ImmutableArray<AddedPart> Parts { get; init; }

    /// <summary>Findings that come with them.</summary>
    public required ImmutableArray<Finding> NewFindings { get; init; }

    /// <summary>Findings that they end.</summary>
    public required ImmutableArray<Finding> EndedFindings { get; init; }

    /// <summary>What the two differences are explained from.</summary>
    public required ExplanationBook Book { get; init; }
}
