using System.Collections.Immutable;

namespace Estimator.Engine.Learning;

/// <summary>What came of a part of a job that was closed.</summary>
/// <param name="Kind">Hours or material.</param>
/// <param name="Key">The phase, or the category of the items, as the catalogue writes it.</param>
/// <param name="Estimated">What the tables gave as they are shipped, so that nothing is learned twice.</param>
/// <param name="Actual">What it took.</param>
public sealed record JobOutcome(LearnedKind Kind, string Key, decimal Estimated, decimal Actual)
{
    /// <summary>The estimated hours by class of items, by their words; empty for material and for jobs that were closed before classes were kept.</summary>
    public ImmutableArray<ClassHours> Classes { get; init; } = [];
}
