using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;

namespace Estimator.Engine.Loads;

/// <summary>The load calculations of a job.</summary>
/// <param name="Sheets">One worksheet a method.</param>
/// <param name="Page">Page of the explanation book.</param>
public sealed record LoadWorksheets(ImmutableArray<LoadWorksheet> Sheets, ExplanationPage Page)
{
    /// <summary>The load of each panel that another panel feeds.</summary>
    public ImmutableArray<FeederLoad> Feeders { get; init; } = [];

    /// <summary>Feeders that carry more than their breaker allows.</summary>
    public ImmutableArray<Finding> Findings { get; init; } = [];
}
