using System.Globalization;
using Estimator.Data.Prices;
using Estimator.Data.Suppliers;
using Estimator.Engine.Catalogue;

namespace Estimator.Web.Catalogues;

/// <summary>Lays the company's own prices over the catalogue that the program carries.</summary>
public static class OwnPrices
{
    /// <summary>Largest pack that a catalogue takes.</summary>
    public const int LargestPack = Offer.LargestPack;

    /// <summary>Highest price of a pack that a catalogue takes, in dollars.</summary>
    public const int HighestDollars = Offer.HighestDollars;

    /// <summary>The catalogue with own prices; its file of offers says the same, so that a saved revision can be priced again.</summary>
    /// <param name="builtIn">The catalogue.</param>
    /// <param name="own">The prices; those of items that the catalogue lacks are left out.</param>
    /// <param name="files">Prices from suppliers' price files. Where both have a price of one supplier for one pack, the newer stands.</param>
    public static PricedCatalogue Over(PricedCatalogue builtIn, IReadOnlyCollection<LocalPrice> own, IReadOnlyCollection<SupplierPrice>? files = null)
    {
        if (own.Count == 0 && files is null or { Count: 0 })
        {
            return builtIn;
        }

        // A note is the user's own text and may hold the very word that marks an invented price: the day alone goes in.
        var offers = own.Select(p => (p with { Note = "" }).ToOffer()).Concat((files ?? []).Select(p => p.ToOffer()).OfType<Offer>())
            .GroupBy(o => (o.Item, o.Supplier, o.PackSize)).Select(same => same.MaxBy(o => o.QuotedOn)!);
        var parts = builtIn.Parts.WithPrices(offers);
        var rows = parts.Items.SelectMany(i => parts.OffersFor(i.Id)).Select(o => string.Join(
            ',', Cell(o.Item), Cell(o.Supplier), o.PackSize.ToString(CultureInfo.InvariantCulture), o.Price.ToDollars().ToString(CultureInfo.InvariantCulture), Cell(o.Note),
            Cell(o.Number), Cell(o.Gtin), Day(o.QuotedOn), Day(o.ExpiresOn), Cell(o.Make), Cell(o.Series), o.Returnable ? "yes" : "no"));
        return new PricedCatalogue(parts, builtIn.Files.SetItem("offers.csv", string.Join('\n', rows.Prepend($"item,supplier,pack_size,price_usd,note,{string.Join(',', PartsCatalogue.OfferColumns)}").Append(""))));
    }

    private static string Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";

    private static string Cell(string text) => $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
