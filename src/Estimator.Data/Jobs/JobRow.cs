using Estimator.Data.Databases;

namespace Estimator.Data.Jobs;

/// <summary>A job as it stands: its version is the sequence of the last edit.</summary>
internal sealed class JobRow : VersionedRow
{
    public required string Id { get; set; }

    public required string Name { get; set; }

    /// <summary>What a search looks in, in lower case, so that both databases find alike.</summary>
    public required string SearchText { get; set; }

    public required string State { get; set; }

    public bool Archived { get; set; }

    /// <summary>The job, in the form of the job file.</summary>
    public required string Json { get; set; }

    public long CreatedUtcTicks { get; set; }

    public long ChangedUtcTicks { get; set; }

    public required string ChangedBy { get; set; }
}
