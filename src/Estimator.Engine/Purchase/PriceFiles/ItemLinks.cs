using System.Collections.Immutable;

namespace Estimator.Engine.Purchase.PriceFiles;

/// <summary>Which item of the catalogue a supplier's number or a GTIN means, as remembered from before.</summary>
/// <param name="Numbers">Item by the supplier's own item number.</param>
/// <param name="Gtins">Item by GTIN of fourteen digits.</param>
public sealed record ItemLinks(ImmutableDictionary<string, string> Numbers, ImmutableDictionary<string, string> Gtins)
{
    /// <summary>Nothing is remembered.</summary>
    public static ItemLinks None { get; } = new(ImmutableDictionary.Create<string, string>(StringComparer.Ordinal), ImmutableDictionary.Create<string, string>(StringComparer.Ordinal));

    /// <summary>These links and that a row is an item.</summary>
    public ItemLinks With(PriceRow row, string item)
    {
        ArgumentNullException.ThrowIfNull(row);
        return new ItemLinks(row.Number.Length > 0 ? Numbers.SetItem(row.Number, item) : Numbers, row.Gtin.Length > 0 ? Gtins.SetItem(row.Gtin, item) : Gtins);
    }
}
