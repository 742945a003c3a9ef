using Estimator.Data.Databases;

namespace Estimator.Data.Jobs;

/// <summary>A job as it stood at a version.</summary>
internal sealed class JobSnapshotRow : OwnedRow
{
    public required string JobId { get; set; }

    public int Version { get; set; }

    public required string Json { get; set; }
}
