using Estimator.Data.Databases;

namespace Estimator.Data.Suppliers;

/// <summary>Which item a supplier's own number means.</summary>
internal sealed class SupplierNumberRow : OwnedRow
{
    public int SupplierId { get; set; }

    public required string Number { get; set; }

    public required string Item { get; set; }
}
