using System.Collections.Immutable;

namespace Estimator.Engine.Purchase.PriceFiles;

/// <summary>Which heading of a price file says what. It is remembered by heading, so that a supplier may move a column.</summary>
/// <param name="Headings">The heading of each column that the file has.</param>
public sealed record ColumnMatching(ImmutableSortedDictionary<PriceColumn, string> Headings)
{
    /// <summary>Stands for a heading of <see cref="PriceColumn.PricedBy"/>: each price is for the whole pack.</summary>
    public const string ByThePack = "(the pack, in every row)";

    /// <summary>Stands for a heading of <see cref="PriceColumn.PricedBy"/>: each price is for one piece or one foot.</summary>
    public const string ByThePiece = "(one piece or one foot, in every row)";

    /// <summary>Whether it is no heading of a file, and stands for what a person said of every row.</summary>
    public static bool IsSaid(string heading) => heading is ByThePack or ByThePiece;

    /// <summary>No column is matched.</summary>
    public static ColumnMatching None { get; } = new(ImmutableSortedDictionary<PriceColumn, string>.Empty);

    /// <summary>This matching with a column put under a heading, or under none.</summary>
    public ColumnMatching With(PriceColumn column, string? heading) =>
        new(string.IsNullOrEmpty(heading) ? Headings.Remove(column) : Headings.SetItem(column, heading));

    /// <summary>What is missing before rows can be read, as a sentence; null where nothing is.</summary>
    public string? Missing
    {
        get
        {
            if (!Headings.ContainsKey(PriceColumn.Price))
            {
                return "No column is matched with the price. Choose the heading under which the price stands.";
            }

            if (Headings.ContainsKey(PriceColumn.PackSize) && !Headings.ContainsKey(PriceColumn.PricedBy))
            {
                return "The file has packs, and nothing says what a price is for. Choose the pack, or one piece or foot, or the heading that says it row by row.";
            }

            return Headings.ContainsKey(PriceColumn.Item) || Headings.ContainsKey(PriceColumn.Number) || Headings.ContainsKey(PriceColumn.Gtin)
                ? null
                : "No column says which item a row is. Choose the heading of our item id, of the supplier's item number, or of the GTIN.";
        }
    }

    /// <summary>Whether two matchings say the same.</summary>
    public bool Equals(ColumnMatching? other) => other is not null && Headings.SequenceEqual(other.Headings);

    /// <inheritdoc/>
    public override int GetHashCode() => Headings.Aggregate(0, (hash, h) => HashCode.Combine(hash, h.Key, h.Value));
}
