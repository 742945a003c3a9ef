using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase.PriceFiles;

/// <summary>A row of a price file that could be read.</summary>
/// <param name="Row">Its row in the file, from 1.</param>
/// <param name="Item">Id of our item, where the file says it.</param>
/// <param name="Number">The supplier's own item number.</param>
/// <param name="Gtin">Global trade item number, as fourteen digits.</param>
/// <param name="Description">What it is, in the supplier's words.</param>
/// <param name="Price">The price as it is written.</param>
/// <param name="PricedBy">What that price is for.</param>
/// <param name="PackSize">Pieces or feet in the pack that is sold; null where the file does not say.</param>
/// <param name="QuotedOn">The day of the price.</param>
/// <param name="ExpiresOn">Its last day.</param>
/// <param name="Make">Make of panel that it is listed for.</param>
/// <param name="Series">Series of that make.</param>
public sealed record PriceRow(
    int Row, string Item, string Number, string Gtin, string Description, decimal Price, PriceUnit PricedBy, int? PackSize, DateOnly? QuotedOn, DateOnly? ExpiresOn, string Make, string Series)
{
    /// <summary>The pack that is sold and its price; or what is missing to know it.</summary>
    /// <param name="byTheFoot">Whether the item is counted in feet.</param>
    /// <remarks>A price below the ten-thousandth of a dollar is rounded to it, half away from zero.</remarks>
    public Parsed<(int PackSize, Money Price)> Pack(bool byTheFoot)
    {
        const int Kept = 4;
        if ((PackSize ?? (PricedBy.IsPack ? PricedBy.Units : byTheFoot ? null : 1)) is not { } size)
        {
            return Parsed<(int, Money)>.Failure("How many feet the coil has is not said; a column with the feet in a coil, or a unit such as 'coil of 250 ft', is accepted.");
        }

        var dollars = decimal.Round(Price * size / PricedBy.Units, Kept, MidpointRounding.AwayFromZero);
        return dollars > Catalogue.Offer.HighestDollars
            ? Parsed<(int, Money)>.Failure(FormattableString.Invariant($"A pack of {size:#,0} would cost ${dollars:#,0.00}; up to {Catalogue.Offer.HighestDollars:#,0} dollars are accepted. Look whether the price is by the hundred or the thousand."))
            : Parsed<(int, Money)>.Success((size, Money.FromDollars(dollars)));
    }
}
