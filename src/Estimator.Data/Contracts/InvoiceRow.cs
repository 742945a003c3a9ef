using Estimator.Data.Databases;

namespace Estimator.Data.Contracts;

/// <summary>An invoice.</summary>
internal sealed class InvoiceRow : VersionedRow
{
    /// <summary>Its number in the company.</summary>
    public int Number { get; set; }

    public required string JobId { get; set; }

    /// <summary>1 for the job's first invoice: two that were made from one standing of the account take the same place, and one of them is refused.</summary>
    public int Place { get; set; }

    public required string Kind { get; set; }

    public long DepositE4 { get; set; }

    public long DepositAppliedE4 { get; set; }

    public long RetainedE4 { get; set; }

    public long ReleasedE4 { get; set; }

    /// <summary>How many events were noted: adding one changes this row, and so checks its version.</summary>
    public int EventCount { get; set; }

    public required string Who { get; set; }

    public long AtUtcTicks { get; set; }

    public List<InvoiceLineRow>? Lines { get; set; }

    public List<InvoiceEventRow>? Events { get; set; }
}
