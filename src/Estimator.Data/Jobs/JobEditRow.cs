using Estimator.Data.Databases;

namespace Estimator.Data.Jobs;

/// <summary>An edit of a job's log. Rows are added and never changed.</summary>
internal sealed class JobEditRow : OwnedRow
{
    public required string JobId { get; set; }

    /// <summary>1 for the first edit; without gaps.</summary>
    public int Sequence { get; set; }

    public required string EditId { get; set; }

    public required string Title { get; set; }

    public required string Json { get; set; }

    /// <summary>What it touched, by stable id.</summary>
    public required List<string> Targets { get; set; }

    public required string Who { get; set; }

    public long AtUtcTicks { get; set; }
}
