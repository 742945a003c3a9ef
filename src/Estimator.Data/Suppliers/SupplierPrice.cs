using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;

namespace Estimator.Data.Suppliers;

/// <summary>What a supplier asks for a pack, from one of its price files.</summary>
public sealed record SupplierPrice
{
    /// <summary>The supplier.</summary>
    public required int SupplierId { get; init; }

    /// <summary>Its name.</summary>
    public required string Supplier { get; init; }

    /// <summary>The item.</summary>
    public required string Item { get; init; }

    /// <summary>Pieces or feet in the pack.</summary>
    public required int PackSize { get; init; }

    /// <summary>Price of the pack; null where the supplier offers it no more.</summary>
    public required Money? Price { get; init; }

    /// <summary>The day of the price.</summary>
    public required DateOnly QuotedOn { get; init; }

    /// <summary>Its last day; null where no end was said.</summary>
    public DateOnly? ExpiresOn { get; init; }

    /// <summary>The supplier's own item number.</summary>
    public string Number { get; init; } = "";

    /// <summary>Global trade item number.</summary>
    public string Gtin { get; init; } = "";

    /// <summary>Make of panel that it is listed for.</summary>
    public string Make { get; init; } = "";

    /// <summary>Series of that make.</summary>
    public string Series { get; init; } = "";

    /// <summary>Number of the price file.</summary>
    public required int Import { get; init; }

    /// <summary>Row in that file; 0 where the file names the pack no more.</summary>
    public required int FileRow { get; init; }

    /// <summary>As an offer of the catalogue; null where the supplier offers it no more.</summary>
    public Offer? ToOffer() => Price is not { } price ? null : new Offer(
        Item, Supplier, PackSize, price,
        FormattableString.Invariant($"quoted {QuotedOn:yyyy-MM-dd}{(ExpiresOn is { } last ? FormattableString.Invariant($", until {last:yyyy-MM-dd}") : "")}"))
    {
        Number = Number,
        Gtin = Gtin,
        QuotedOn = QuotedOn,
        ExpiresOn = ExpiresOn,
        Make = Make,
        Series = Series,
    };
}
