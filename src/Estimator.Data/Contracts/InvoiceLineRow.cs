using Estimator.Data.Databases;

namespace Estimator.Data.Contracts;

/// <summary>A line of an invoice.</summary>
internal sealed class InvoiceLineRow : OwnedRow
{
    public int Number { get; set; }

    public int Line { get; set; }

    public required string LineId { get; set; }

    public required string Title { get; set; }

    public long ValueE4 { get; set; }

    public long BeforeE4 { get; set; }

    public long NowE4 { get; set; }
}
