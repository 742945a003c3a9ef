namespace Estimator.Data.Jobs;

/// <summary>The job is no longer there: somebody deleted it.</summary>
/// <param name="JobId">Its id.</param>
public sealed record JobGone(string JobId) : AppendResult;
