using System.Globalization;
using Estimator.Data.Prices;

namespace Estimator.Web.Catalogues;

/// <summary>Lays the company's own prices over the catalogue that the program carries.</summary>
public static class OwnPrices
{
    /// <summary>Largest pack that a catalogue takes.</summary>
    public const int LargestPack = 100_000;

    /// <summary>Highest price of a pack that a catalogue takes, in dollars.</summary>
    public const int HighestDollars = 1_000_000;

    /// <summary>The catalogue with own prices; its file of offers says the same, so that a saved revision can be priced again.</summary>
    /// <param name="builtIn">The catalogue.</param>
    /// <param name="own">The prices; those of items that the catalogue lacks are left out.</param>
    public static PricedCatalogue Over(PricedCatalogue builtIn, IReadOnlyCollection<LocalPrice> own)
    {
        if (own.Count == 0)
        {
            return builtIn;
        }

        // A note is the user's own text and may hold the very word that marks an invented price: the day alone goes in.
        var parts = builtIn.Parts.WithPrices(own.Select(p => (p with { Note = "" }).ToOffer()));
        var rows = parts.Items.SelectMany(i => parts.OffersFor(i.Id)).Select(o => string.Join(
            ',', Cell(o.Item), Cell(o.Supplier), o.PackSize.ToString(CultureInfo.InvariantCulture), o.Price.ToDollars().ToString(CultureInfo.InvariantCulture), Cell(o.Note)));
        return new PricedCatalogue(parts, builtIn.Files.SetItem("offers.csv", string.Join('\n', rows.Prepend("item,supplier,pack_size,price_usd,note").Append(""))));
    }

    private static string Cell(string text) => $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
