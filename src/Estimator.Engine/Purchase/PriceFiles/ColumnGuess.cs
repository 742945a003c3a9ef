using System.Collections.Immutable;

namespace Estimator.Engine.Purchase.PriceFiles;

/// <summary>Guesses by the words of its heading what a column says. A person corrects the guess.</summary>
/// <remarks>Words that price files use; common practice, no source.</remarks>
public static class ColumnGuess
{
    // Every word of a phrase must stand in the heading; earlier phrases win.
    private static readonly ImmutableArray<(PriceColumn Column, string Phrase)> Phrases =
    [
        (PriceColumn.Item, "our item"), (PriceColumn.Item, "item id"), (PriceColumn.Item, "catalogue id"), (PriceColumn.Item, "catalog id"),
        (PriceColumn.Gtin, "gtin"), (PriceColumn.Gtin, "upc"), (PriceColumn.Gtin, "ean"), (PriceColumn.Gtin, "barcode"), (PriceColumn.Gtin, "bar code"),
        (PriceColumn.ExpiresOn, "expires"), (PriceColumn.ExpiresOn, "expiry"), (PriceColumn.ExpiresOn, "expiration"), (PriceColumn.ExpiresOn, "valid until"), (PriceColumn.ExpiresOn, "valid to"),
        (PriceColumn.ExpiresOn, "valid thru"), (PriceColumn.ExpiresOn, "good until"), (PriceColumn.ExpiresOn, "end date"),
        (PriceColumn.QuotedOn, "quoted"), (PriceColumn.QuotedOn, "quote date"), (PriceColumn.QuotedOn, "price date"), (PriceColumn.QuotedOn, "effective"), (PriceColumn.QuotedOn, "as of"),
        (PriceColumn.QuotedOn, "date"),
        (PriceColumn.PackSize, "pack"), (PriceColumn.PackSize, "pkg qty"), (PriceColumn.PackSize, "box qty"), (PriceColumn.PackSize, "std qty"), (PriceColumn.PackSize, "coil ft"),
        (PriceColumn.PackSize, "feet"), (PriceColumn.PackSize, "put up"), (PriceColumn.PackSize, "quantity"), (PriceColumn.PackSize, "qty"),
        (PriceColumn.PricedBy, "uom"), (PriceColumn.PricedBy, "unit of measure"), (PriceColumn.PricedBy, "price unit"), (PriceColumn.PricedBy, "price per"), (PriceColumn.PricedBy, "priced by"),
        (PriceColumn.PricedBy, "per"), (PriceColumn.PricedBy, "u m"),
        (PriceColumn.Price, "net price"), (PriceColumn.Price, "your price"), (PriceColumn.Price, "unit price"), (PriceColumn.Price, "price"), (PriceColumn.Price, "net"), (PriceColumn.Price, "cost"),
        (PriceColumn.PricedBy, "unit"),
        (PriceColumn.Description, "description"), (PriceColumn.Description, "desc"), (PriceColumn.Description, "product name"), (PriceColumn.Description, "name"),
        (PriceColumn.Make, "make"), (PriceColumn.Make, "fits"), (PriceColumn.Series, "series"),
        (PriceColumn.Number, "part"), (PriceColumn.Number, "sku"), (PriceColumn.Number, "stock no"), (PriceColumn.Number, "catalog no"), (PriceColumn.Number, "catalog number"),
        (PriceColumn.Number, "cat no"), (PriceColumn.Number, "item number"), (PriceColumn.Number, "item no"), (PriceColumn.Number, "number"), (PriceColumn.Number, "item"), (PriceColumn.Number, "code"), (PriceColumn.Number, "no"),
    ];

    /// <summary>The guess for the headings of a file; each column and each heading is used once.</summary>
    /// <param name="headings">The headings, from the left.</param>
    public static ColumnMatching Of(IReadOnlyList<string> headings)
    {
        ArgumentNullException.ThrowIfNull(headings);
        var matching = ColumnMatching.None;
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (column, phrase) in Phrases)
        {
            if (!matching.Headings.ContainsKey(column) && headings.FirstOrDefault(h => !taken.Contains(h) && Holds(h, phrase)) is { } heading)
            {
                matching = matching.With(column, heading);
                taken.Add(heading);
            }
        }

        return matching;
    }

    /// <summary>Which of a file's first rows holds the headings: the one with most columns guessed, the first of equals.</summary>
    /// <param name="rows">The first rows.</param>
    /// <returns>Its index; 0 where no row looks like headings.</returns>
    public static int HeadingRow(IReadOnlyList<IReadOnlyList<string>> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        return rows.Select((row, i) => (Found: Of(row).Headings.Count, At: -i)).DefaultIfEmpty().Max() is { Found: > 0, At: var at } ? -at : 0;
    }

    private static bool Holds(string heading, string phrase)
    {
        var words = Words(heading);
        return phrase.Split(' ').All(w => words.Contains(w));
    }

    private static HashSet<string> Words(string heading) =>
        [.. string.Concat(heading.ToLowerInvariant().Select(c => char.IsLetterOrDigit(c) ? c : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries)];
}
