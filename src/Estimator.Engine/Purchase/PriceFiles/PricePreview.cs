using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase.PriceFiles;

/// <summary>What a price file would do, before anything is written.</summary>
/// <param name="Changes">A line for each pack, by item and pack.</param>
/// <param name="Unmatched">Rows of which nobody knows which item they are, in file order.</param>
/// <param name="Problems">What is wrong in rows that say which item they are, in file order.</param>
public sealed record PricePreview(ImmutableArray<PackChange> Changes, ImmutableArray<PriceRow> Unmatched, ImmutableArray<RowProblem> Problems)
{
    /// <summary>Compares the rows of a file with the prices of before.</summary>
    /// <param name="rows">The rows that could be read, in file order.</param>
    /// <param name="links">Which item a number or a GTIN means.</param>
    /// <param name="before">The supplier's prices until now, one a pack.</param>
    /// <param name="catalogue">The catalogue.</param>
    /// <remarks>A row is an item by our id, else by the supplier's number, else by GTIN. Where two of them name different items the row is refused.</remarks>
    public static PricePreview Of(IEnumerable<PriceRow> rows, ItemLinks links, IReadOnlyCollection<KnownPrice> before, PartsCatalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(links);
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(catalogue);
        var old = before.ToDictionary(k => (k.Item, k.PackSize), k => k.Price);
        var seen = new Dictionary<(string Item, int Pack), int>();
        var (changes, unmatched, problems) = (new List<PackChange>(), ImmutableArray.CreateBuilder<PriceRow>(), ImmutableArray.CreateBuilder<RowProblem>());
        foreach (var row in rows)
        {
            if (ItemOf(row, links, catalogue, problems) is not { } id)
            {
                continue;
            }

            if (id.Length == 0 || catalogue.Find(id) is not { } item)
            {
                unmatched.Add(row);
                continue;
            }

            var pack = row.Pack(item.Unit == "foot");
            if (!pack.Ok)
            {
                problems.Add(new RowProblem(row.Row, "Pack", pack.Problem));
            }
            else if (seen.TryGetValue((id, pack.Value.PackSize), out var first))
            {
                problems.Add(new RowProblem(row.Row, "Pack", FormattableString.Invariant($"Row {first} prices this pack already: {item.Description}, {pack.Value.PackSize}. One row a pack is accepted; the first was kept.")));
            }
            else
            {
                seen.Add((id, pack.Value.PackSize), row.Row);
                Money? was = old.TryGetValue((id, pack.Value.PackSize), out var known) ? known : null;
                var kind = was is null ? PackChangeKind.New : was == pack.Value.Price ? PackChangeKind.Unchanged : PackChangeKind.Changed;
                changes.Add(new PackChange(kind, id, pack.Value.PackSize, was, pack.Value.Price, row));
            }
        }

        changes.AddRange(before.Where(k => !seen.ContainsKey((k.Item, k.PackSize))).Select(k => new PackChange(PackChangeKind.Gone, k.Item, k.PackSize, k.Price, null, null)));
        return new PricePreview([.. changes.OrderBy(c => c.Item, StringComparer.Ordinal).ThenBy(c => c.PackSize)], unmatched.ToImmutable(), problems.ToImmutable());
    }

    // The item's id; empty where nobody knows it; null where the row contradicts itself.
    private static string? ItemOf(PriceRow row, ItemLinks links, PartsCatalogue catalogue, ImmutableArray<RowProblem>.Builder problems)
    {
        if (row.Item.Length > 0 && catalogue.Find(row.Item) is null)
        {
            problems.Add(new RowProblem(row.Row, "Item", $"Found '{PriceCell.Short(row.Item)}'; the id of an item of the catalogue is accepted, or nothing where a number or a GTIN says it."));
            return null;
        }

        var byNumber = row.Number.Length > 0 ? links.Numbers.GetValueOrDefault(row.Number, "") : "";
        var byGtin = row.Gtin.Length > 0 ? links.Gtins.GetValueOrDefault(row.Gtin, "") : "";
        if (row.Item.Length > 0)
        {
            return row.Item;
        }

        if (byNumber.Length > 0 && byGtin.Length > 0 && byNumber != byGtin)
        {
            problems.Add(new RowProblem(row.Row, "GTIN", $"The number {PriceCell.Short(row.Number)} is remembered as {byNumber}, the GTIN {row.Gtin} as {byGtin}; both must name one item. State our item id in the row, or match it by hand."));
            return null;
        }

        return byNumber.Length > 0 ? byNumber : byGtin;
    }
}
