using Estimator.Data.Databases;

namespace Estimator.Data.Prices;

/// <summary>A price of a pack at a supplier.</summary>
internal sealed class LocalPriceRow : VersionedRow
{
    public required string Item { get; set; }

    public required string Supplier { get; set; }

    public int PackSize { get; set; }

    public long PriceE4 { get; set; }

    public DateOnly AsOf { get; set; }

    public string Note { get; set; } = "";
}
