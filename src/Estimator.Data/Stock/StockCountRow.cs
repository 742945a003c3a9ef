using Estimator.Data.Databases;

namespace Estimator.Data.Stock;

/// <summary>So many units of an item on the shelf.</summary>
internal sealed class StockCountRow : VersionedRow
{
    public required string Item { get; set; }

    public long CountE4 { get; set; }
}
