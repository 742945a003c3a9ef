using Estimator.Data.Databases;

namespace Estimator.Data.Contracts;

/// <summary>Something that happened to an invoice. Never changed.</summary>
internal sealed class InvoiceEventRow : OwnedRow
{
    public int Number { get; set; }

    public int Sequence { get; set; }

    public required string Kind { get; set; }

    public DateOnly On { get; set; }

    public long AmountE4 { get; set; }

    public required string Text { get; set; }

    public required string Who { get; set; }

    public long AtUtcTicks { get; set; }
}
