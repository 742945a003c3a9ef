namespace Estimator.Data.Revisions;

/// <summary>Hours for an item in a phase.</summary>
internal sealed class LaborRow : RevisionLineRow
{
    public required string Phase { get; set; }

    public required string Item { get; set; }

    public long QuantityE4 { get; set; }

    public long HoursE4 { get; set; }
}
