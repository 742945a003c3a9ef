using Estimator.Data.Databases;

namespace Estimator.Data.Actuals;

/// <summary>Estimated hours of a class of items in a phase of a closed job.</summary>
internal sealed class JobOutcomeClassRow : OwnedRow
{
    public required string JobId { get; set; }

    public required string Kind { get; set; }

    public required string Key { get; set; }

    public required string Class { get; set; }

    public long EstimatedE4 { get; set; }
}
