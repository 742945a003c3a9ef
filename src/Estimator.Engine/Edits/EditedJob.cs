using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;

namespace Estimator.Engine.Edits;

/// <summary>What became of a job under an edit: the job after it, or problems. The job before it stands in either case.</summary>
public sealed class EditedJob
{
    private readonly Job? _job;

    private EditedJob(Job? job, ImmutableArray<JobProblem> problems) => (_job, Problems) = (job, problems);

    /// <summary>Why the edit was refused, by path in the job file; empty when it was made.</summary>
    public ImmutableArray<JobProblem> Problems { get; }

    /// <summary>Whether the edit was made.</summary>
    public bool Ok => Problems.IsEmpty;

    /// <summary>The job after the edit.</summary>
    /// <exception cref="InvalidOperationException">The edit was refused.</exception>
    public Job Job => Ok ? _job! : throw new InvalidOperationException(Problems[0].ToString());

    internal static EditedJob Refused(JobProblem problem) => new(null, [problem]);

    internal static EditedJob Of(Job job, ImmutableArray<JobProblem> problems) => new(job, problems);
}
