using System.Collections.Immutable;
using Estimator.Engine.House;

namespace Estimator.Data.Jobs;

/// <summary>A job as it is stored.</summary>
/// <param name="Job">The job.</param>
/// <param name="Version">Sequence of the last edit; an append names the version that it was made on.</param>
/// <param name="Tail">The last edits, oldest first.</param>
/// <param name="State">Where the job stands.</param>
/// <param name="Archived">Whether it is in the archive.</param>
public sealed record StoredJob(Job Job, int Version, ImmutableArray<LoggedEdit> Tail, JobState State, bool Archived)
{
    /// <summary>How many edits the tail holds at most.</summary>
    public const int LongestTail = 200;
}
