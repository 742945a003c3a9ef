using System.Collections.Immutable;
using Estimator.Engine.House;

namespace Estimator.Engine.JobFiles;

/// <summary>What became of a job file: a job, or problems.</summary>
public sealed class JobReading
{
    private readonly Job? _job;

    private JobReading(Job? job, ImmutableArray<JobProblem> problems) => (_job, Problems) = (job, problems);

    /// <summary>What is wrong; empty when the job is in order.</summary>
    public ImmutableArray<JobProblem> Problems { get; }

    /// <summary>Whether the job is in order.</summary>
    public bool Ok => Problems.IsEmpty;

    /// <summary>The job.</summary>
    /// <exception cref="InvalidOperationException">The file was refused.</exception>
    public Job Job => Ok ? _job! : throw new InvalidOperationException(Problems[0].ToString());

    internal static JobReading Refused(JobProblem problem) => new(null, [problem]);

    internal static JobReading Refused(ImmutableArray<JobProblem> problems) => new(null, problems);

    internal static JobReading Of(Job job, ImmutableArray<JobProblem> problems) => new(job, problems);
}
