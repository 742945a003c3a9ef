using Estimator.Data.Databases;

namespace Estimator.Data.Stock;

/// <summary>A partial coil or reel on the shelf.</summary>
internal sealed class StockPieceRow : VersionedRow
{
    public int Id { get; set; }

    public required string Item { get; set; }

    public required string Label { get; set; }

    public long LengthNm { get; set; }
}
