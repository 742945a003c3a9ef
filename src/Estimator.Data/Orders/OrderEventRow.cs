using Estimator.Data.Databases;

namespace Estimator.Data.Orders;

/// <summary>Something that happened to an order. Never changed.</summary>
internal sealed class OrderEventRow : OwnedRow
{
    public int OrderId { get; set; }

    public int Sequence { get; set; }

    public required string Kind { get; set; }

    public DateOnly On { get; set; }

    public int Line { get; set; }

    public int Packs { get; set; }

    public long AmountE4 { get; set; }

    public DateOnly? Until { get; set; }

    public required string Text { get; set; }

    public required string Who { get; set; }

    public long AtUtcTicks { get; set; }
}
