using Estimator.Data.Databases;

namespace Estimator.Data.Contracts;

/// <summary>A line of a change order.</summary>
internal sealed class ChangeLineRow : OwnedRow
{
    public string JobId { get; set; } = "";

    public int Number { get; set; }

    public int Line { get; set; }

    public required string Kind { get; set; }

    public required string Text { get; set; }

    public long QuantityE4 { get; set; }

    public required string Unit { get; set; }

    public long? AmountE4 { get; set; }
}
