using Estimator.Data.Databases;

namespace Estimator.Data.Actuals;

/// <summary>What came of a part of a closed job.</summary>
internal sealed class JobOutcomeRow : OwnedRow
{
    public required string JobId { get; set; }

    public required string Kind { get; set; }

    public required string Key { get; set; }

    public long EstimatedE4 { get; set; }

    public long ActualE4 { get; set; }

    public List<JobOutcomeClassRow>? Classes { get; set; }
}
