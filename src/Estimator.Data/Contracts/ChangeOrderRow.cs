using Estimator.Data.Databases;

namespace Estimator.Data.Contracts;

/// <summary>A change order.</summary>
internal sealed class ChangeOrderRow : VersionedRow
{
    public required string JobId { get; set; }

    public int Number { get; set; }

    public int FromRevision { get; set; }

    public int ToRevision { get; set; }

    public long PriceE4 { get; set; }

    public int Days { get; set; }

    public required string Reason { get; set; }

    /// <summary>How many events were noted: adding one changes this row, and so checks its version.</summary>
    public int EventCount { get; set; }

    public required string Who { get; set; }

    public long AtUtcTicks { get; set; }

    public List<ChangeLineRow>? Lines { get; set; }

    public List<ChangeEventRow>? Events { get; set; }
}
