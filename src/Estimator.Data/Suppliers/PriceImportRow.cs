using Estimator.Data.Databases;

namespace Estimator.Data.Suppliers;

/// <summary>A price file that was read. Never changed.</summary>
internal sealed class PriceImportRow : OwnedRow
{
    public int SupplierId { get; set; }

    /// <summary>1 for the supplier's first file.</summary>
    public int Number { get; set; }

    public required string FileName { get; set; }

    public required string FileHash { get; set; }

    public required string Who { get; set; }

    public long AtUtcTicks { get; set; }

    public int Prices { get; set; }

    public int Withdrawn { get; set; }
}
