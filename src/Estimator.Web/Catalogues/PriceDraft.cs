using System.Globalization;
using Estimator.Data.Prices;
using Estimator.Engine.Measures;
using Estimator.Web.Figures;

namespace Estimator.Web.Catalogues;

/// <summary>A local price as it is being typed.</summary>
public sealed class PriceDraft
{
    private const string DayForm = "yyyy-MM-dd";

    /// <summary>Id of the item.</summary>
    public required string Item { get; init; }

    /// <summary>The price that is changed; null for a new one.</summary>
    public LocalPrice? Old { get; init; }

    /// <summary>Who asks it.</summary>
    public string Supplier { get; set; } = "";

    /// <summary>Units in the pack.</summary>
    public string Pack { get; set; } = "";

    /// <summary>Price of the pack.</summary>
    public string Price { get; set; } = "";

    /// <summary>The day that it was asked or paid, year first.</summary>
    public string AsOf { get; set; } = "";

    /// <summary>Where it comes from.</summary>
    public string Note { get; set; } = "";

    /// <summary>A new price of an item, for the pack that is usual.</summary>
    public static PriceDraft New(string item, int pack, DateOnly today) =>
        new() { Item = item, Pack = pack.ToString(CultureInfo.InvariantCulture), AsOf = today.ToString(DayForm, CultureInfo.InvariantCulture) };

    /// <summary>A price to be changed.</summary>
    public static PriceDraft Of(LocalPrice price, DateOnly today) => new()
    {
        Item = price.Item,
        Old = price,
        Supplier = price.Supplier,
        Pack = price.PackSize.ToString(CultureInfo.InvariantCulture),
        Price = American.Fixed(price.Price.ToDollars(), 2),
        AsOf = today.ToString(DayForm, CultureInfo.InvariantCulture),
        Note = price.Note,
    };

    /// <summary>The price, or what is wrong with each field by its name.</summary>
    public (LocalPrice? Price, IReadOnlyDictionary<string, string> Problems) Read(DateOnly today)
    {
        var problems = new Dictionary<string, string>(StringComparer.Ordinal);
        T Take<T>(string field, Parsed<T> read)
        {
            if (read.Ok)
            {
                return read.Value;
            }

            problems[field] = read.Problem;
            return default!;
        }

        var pack = Take(nameof(Pack), PriceText.Whole(Pack, 1, OwnPrices.LargestPack, "pieces or feet in a pack"));
        var price = Take(nameof(Price), PriceText.Parse(Price));
        if (Supplier.Trim().Length is 0 or > PriceLimits.Name)
        {
            problems[nameof(Supplier)] = $"Found {American.Count(Supplier.Trim().Length, "character")}; 1 to {PriceLimits.Name} are accepted.";
        }

        if (!DateOnly.TryParseExact(AsOf, DayForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) || day > today)
        {
            problems[nameof(AsOf)] = $"Found “{PriceText.Short(AsOf)}”; a day up to today is accepted.";
        }

        return problems.Count > 0 ? (null, problems) : (new LocalPrice
        {
            Item = Item,
            Supplier = Supplier.Trim(),
            PackSize = pack,
            Price = price,
            AsOf = day,
            Note = Note.Trim(),
            Version = Old is { } old && old.Supplier == Supplier.Trim() && old.PackSize == pack ? old.Version : 0,
        }, problems);
    }
}
