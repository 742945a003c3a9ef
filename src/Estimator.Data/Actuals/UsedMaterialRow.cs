using Estimator.Data.Databases;

namespace Estimator.Data.Actuals;

/// <summary>Material that went into a job.</summary>
internal sealed class UsedMaterialRow : OwnedRow
{
    public required string JobId { get; set; }

    public required string Item { get; set; }

    public long QuantityE4 { get; set; }
}
