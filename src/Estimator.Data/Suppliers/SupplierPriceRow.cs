using Estimator.Data.Databases;

namespace Estimator.Data.Suppliers;

/// <summary>What a price file said of a pack. Never changed; the newest of a pack is in force.</summary>
internal sealed class SupplierPriceRow : OwnedRow
{
    public int SupplierId { get; set; }

    public required string Item { get; set; }

    public int PackSize { get; set; }

    /// <summary>Number of the file.</summary>
    public int Import { get; set; }

    /// <summary>Row in the file; 0 where the file names the pack no more.</summary>
    public int FileRow { get; set; }

    /// <summary>Price of the pack; null where the supplier offers it no more.</summary>
    public long? PriceE4 { get; set; }

    public DateOnly QuotedOn { get; set; }

    public DateOnly? ExpiresOn { get; set; }

    public string Number { get; set; } = "";

    public string Gtin { get; set; } = "";

    public string Make { get; set; } = "";

    public string Series { get; set; } = "";
}
