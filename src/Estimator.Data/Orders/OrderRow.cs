using Estimator.Data.Databases;

namespace Estimator.Data.Orders;

/// <summary>A purchase order.</summary>
internal sealed class OrderRow : VersionedRow
{
    public int Id { get; set; }

    public required string Number { get; set; }

    public int SupplierId { get; set; }

    public required string Supplier { get; set; }

    public string? Phase { get; set; }

    public DateOnly? NeedBy { get; set; }

    public required string Way { get; set; }

    public string Note { get; set; } = "";

    public long DeliveryE4 { get; set; }

    /// <summary>How many events were noted: adding one changes this row, and so checks its version.</summary>
    public int EventCount { get; set; }

    public required string Who { get; set; }

    public long AtUtcTicks { get; set; }

    public List<OrderJobRow>? Jobs { get; set; }

    public List<OrderLineRow>? Lines { get; set; }

    public List<OrderEventRow>? Events { get; set; }
}
