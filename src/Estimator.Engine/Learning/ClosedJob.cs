using System.Collections.Immutable;

namespace Estimator.Engine.Learning;

/// <summary>A job that was closed, with what came of it.</summary>
/// <param name="JobId">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="ClosedOn">The day.</param>
/// <param name="Outcomes">What came of its parts.</param>
public sealed record ClosedJob(string JobId, string Name, DateOnly ClosedOn, ImmutableArray<JobOutcome> Outcomes);
