using System.Collections.Immutable;
using System.Globalization;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Catalogue;

/// <summary>Turns rows into catalogue entries and collects what is wrong with them.</summary>
internal sealed class CatalogueReading(List<string> problems)
{
    internal ImmutableArray<CatalogueItem> Items(CsvTable table)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var items = ImmutableArray.CreateBuilder<CatalogueItem>();
        foreach (var row in table.Rows)
        {
            var (id, unit) = (row["id"], row["unit"]);
            if (id.Length == 0 || !seen.Add(id))
            {
                problems.Add(row.Problem("id", id, "an id that no other row has"));
            }
            else if (unit is not ("each" or "foot"))
            {
                problems.Add(row.Problem("unit", unit, "each or foot"));
            }
            else
            {
                items.Add(new CatalogueItem(id, row["category"], row["description"], unit));
            }
        }

        return items.ToImmutable();
    }

    internal ImmutableArray<BoxItem> Boxes(CsvTable table, ImmutableArray<CatalogueItem> items) =>
        [.. Known(table, items).Select(r => new BoxItem(
                r["item"], Word<BoxUse>(r, "use"), YesNo(r, "old_work"), (int)Number(r, "gangs", 1, 8), Volume.FromCubicInches(Number(r, "volume_in3", 1, 500)), YesNo(r, "internal_clamps"),
                r.Has("material") ? Word<BoxMaterial>(r, "material") : BoxMaterial.Any))
            .OrderBy(b => b.Volume).ThenBy(b => b.ItemId, StringComparer.Ordinal)];

    internal ImmutableDictionary<string, string> Kits(CsvTable table, ImmutableArray<CatalogueItem> items)
    {
        var kits = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var row in Known(table, items))
        {
            if (!kits.TryAdd(row["kit"], row["item"]))
            {
                problems.Add(row.Problem("kit", row["kit"], "a kit that no other row has"));
            }
        }

        return kits.ToImmutable();
    }

    internal ImmutableArray<LaborUnit> Labor(CsvTable table, ImmutableArray<CatalogueItem> items) =>
        [.. Known(table, items).Select(r => new LaborUnit(r["item"], Word<WorkPhase>(r, "phase"), Number(r, "hours", 0, 1000), Number(r, "per", 1, 10000), r["basis"]))];

    internal ImmutableArray<Offer> Offers(CsvTable table, ImmutableArray<CatalogueItem> items) =>
        [.. Known(table, items).Select(r => new Offer(
            r["item"], r["supplier"], (int)Number(r, "pack_size", 1, Offer.LargestPack), Money.FromDollars(Number(r, "price_usd", 0, Offer.HighestDollars)), r["note"])
        {
            Number = Optional(r, "number"),
            Gtin = Optional(r, "gtin"),
            QuotedOn = Day(r, "quoted_on"),
            ExpiresOn = Day(r, "expires_on"),
            Make = Optional(r, "make"),
            Series = Optional(r, "series"),
            Returnable = Optional(r, "returnable").Length == 0 || YesNo(r, "returnable"),
        })];

    private static string Optional(CsvRow row, string column) => row.Has(column) ? row[column] : "";

    private DateOnly? Day(CsvRow row, string column)
    {
        if (Optional(row, column) is not { Length: > 0 } text)
        {
            return null;
        }

        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return day;
        }

        problems.Add(row.Problem(column, text, "a day such as 2026-03-31"));
        return null;
    }

    private IEnumerable<CsvRow> Known(CsvTable table, ImmutableArray<CatalogueItem> items)
    {
        var ids = items.Select(i => i.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var row in table.Rows)
        {
            if (ids.Contains(row["item"]))
            {
                yield return row;
            }
            else
            {
                problems.Add(row.Problem("item", row["item"], "an id that stands in items.csv"));
            }
        }
    }

    private decimal Number(CsvRow row, string column, decimal least, decimal most)
    {
        if (decimal.TryParse(row[column], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && value >= least && value <= most)
        {
            return value;
        }

        problems.Add(row.Problem(column, row[column], string.Create(CultureInfo.InvariantCulture, $"a number from {least} to {most}")));
        return least;
    }

    private bool YesNo(CsvRow row, string column)
    {
        if (row[column] is not ("yes" or "no"))
        {
            problems.Add(row.Problem(column, row[column], "yes or no"));
        }

        return row[column] == "yes";
    }

    private T Word<T>(CsvRow row, string column)
        where T : struct, Enum
    {
        foreach (var member in Enum.GetValues<T>())
        {
            if (Words.Snake(member) == row[column])
            {
                return member;
            }
        }

        problems.Add(row.Problem(column, row[column], $"one of {string.Join(", ", Enum.GetValues<T>().Select(Words.Snake))}"));
        return Enum.GetValues<T>()[0];
    }
}
