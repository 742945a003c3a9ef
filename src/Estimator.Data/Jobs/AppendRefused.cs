using System.Collections.Immutable;
using Estimator.Engine.JobFiles;

namespace Estimator.Data.Jobs;

/// <summary>Nothing was stored, since the edit does not fit the job as it stands.</summary>
/// <param name="Problems">What was found and what is accepted.</param>
/// <param name="Current">The job as it stands.</param>
public sealed record AppendRefused(ImmutableArray<JobProblem> Problems, StoredJob Current) : AppendResult;
