using Estimator.Data.Databases;

namespace Estimator.Data.Orders;

/// <summary>A line of an order. Never changed.</summary>
internal sealed class OrderLineRow : OwnedRow
{
    public int OrderId { get; set; }

    public int Line { get; set; }

    public required string Item { get; set; }

    public required string Description { get; set; }

    public required string Unit { get; set; }

    public int PackSize { get; set; }

    public int Packs { get; set; }

    public long PackPriceE4 { get; set; }

    public required string Number { get; set; }
}
