using Estimator.Data.Databases;

namespace Estimator.Data.Suppliers;

/// <summary>Which item a global trade item number means, whoever sells it.</summary>
internal sealed class ItemGtinRow : OwnedRow
{
    public required string Gtin { get; set; }

    public required string Item { get; set; }
}
