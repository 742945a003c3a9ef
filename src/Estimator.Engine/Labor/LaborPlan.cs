using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;

namespace Estimator.Engine.Labor;

/// <summary>Hours of the job.</summary>
public sealed record LaborPlan
{
    /// <summary>The lines, in takeoff order.</summary>
    public required ImmutableArray<LaborLine> Lines { get; init; }

    /// <summary>Hours by phase.</summary>
    public required ImmutableSortedDictionary<WorkPhase, Fact> ByPhase { get; init; }

    /// <summary>All hours.</summary>
    public required Fact Total { get; init; }

    /// <summary>Days on the calendar of waiting for the utility; null without work on the service. They are no hours.</summary>
    public Fact? WaitDays { get; init; }

    /// <summary>What a reader must know of the hours.</summary>
    public ImmutableArray<Finding> Findings { get; init; } = [];

    /// <summary>Page of the explanation book.</summary>
    public required ExplanationPage Page { get; init; }
}
