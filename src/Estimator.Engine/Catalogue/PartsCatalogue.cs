using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Catalogue;

/// <summary>What can be counted, bought and worked on, read from CSV text.</summary>
public sealed class PartsCatalogue
{
    private readonly (ImmutableArray<LaborUnit> Labor, ImmutableArray<Offer> Offers) _all;
    private readonly ImmutableDictionary<string, CatalogueItem> _items;
    private readonly ImmutableDictionary<string, string> _kits;
    private readonly ILookup<string, LaborUnit> _labor;
    private readonly ILookup<string, Offer> _offers;

    private PartsCatalogue(
        ImmutableArray<CatalogueItem> items, ImmutableArray<BoxItem> boxes, ImmutableDictionary<string, string> kits, ImmutableArray<LaborUnit> labor, ImmutableArray<Offer> offers,
        string hash)
    {
        Items = items;
        Boxes = boxes;
        Hash = hash;
        _all = (labor, offers);
        _items = items.ToImmutableDictionary(i => i.Id, StringComparer.Ordinal);
        _kits = kits;
        _labor = labor.ToLookup(l => l.Item, StringComparer.Ordinal);
        _offers = offers.ToLookup(o => o.Item, StringComparer.Ordinal);
    }

    /// <summary>The files that a catalogue is made of.</summary>
    public static ImmutableArray<string> FileNames { get; } = ["items.csv", "boxes.csv", "kits.csv", "labor.csv", "offers.csv"];

    /// <summary>The columns that offers.csv may have beside those that it must have.</summary>
    public static ImmutableArray<string> OfferColumns { get; } = ["number", "gtin", "quoted_on", "expires_on", "make", "series", "returnable"];

    /// <summary>The items, in file order.</summary>
    public ImmutableArray<CatalogueItem> Items { get; }

    /// <summary>The boxes, smallest first.</summary>
    public ImmutableArray<BoxItem> Boxes { get; }

    /// <summary>Hash of the files' text.</summary>
    public string Hash { get; }

    /// <summary>The item with an id; null where the catalogue lacks it.</summary>
    public CatalogueItem? Find(string id) => _items.GetValueOrDefault(id);

    /// <summary>The item of a kit; null where the catalogue lacks it.</summary>
    public CatalogueItem? OfKit(string kit) => _kits.TryGetValue(kit, out var id) ? Find(id) : null;

    /// <summary>Hours for an item, one entry a phase.</summary>
    public IEnumerable<LaborUnit> LaborFor(string item) => _labor[item];

    /// <summary>Offers of an item.</summary>
    public IEnumerable<Offer> OffersFor(string item) => _offers[item];

    /// <summary>Reads a catalogue.</summary>
    /// <param name="csvByFileName">The text of each file of <see cref="FileNames"/>.</param>
    public static Parsed<PartsCatalogue> Read(IReadOnlyDictionary<string, string> csvByFileName)
    {
        var problems = new List<string>();
        CsvTable File(string name, ImmutableArray<string> further, params ReadOnlySpan<string> columns)
        {
            if (csvByFileName.TryGetValue(name, out var text))
            {
                return CsvTable.Read(name, text, [.. columns], further, problems);
            }

            problems.Add($"{name}: found no such file, {string.Join(", ", FileNames)} are accepted, all of them.");
            return CsvTable.Empty(name);
        }

        var reader = new CatalogueReading(problems);
        var items = reader.Items(File("items.csv", [], "id", "category", "description", "unit"));
        var boxes = reader.Boxes(File("boxes.csv", ["material"], "item", "use", "old_work", "gangs", "volume_in3", "internal_clamps"), items);
        var kits = reader.Kits(File("kits.csv", [], "kit", "item"), items);
        var labor = reader.Labor(File("labor.csv", [], "item", "phase", "hours", "per", "basis"), items);
        var offers = reader.Offers(File("offers.csv", OfferColumns, "item", "supplier", "pack_size", "price_usd", "note"), items);
        return problems.Count == 0
            ? Parsed<PartsCatalogue>.Success(new PartsCatalogue(items, boxes, kits, labor, offers, HashOf(csvByFileName)))
            : Parsed<PartsCatalogue>.Failure(string.Join('\n', problems.Take(20)));
    }

    /// <summary>This catalogue with a firm's own prices: an item that has one of them loses its sample offers and keeps all others.</summary>
    /// <param name="own">The firm's own offers; those of items that the catalogue lacks are left out.</param>
    public PartsCatalogue WithPrices(IEnumerable<Offer> own)
    {
        ImmutableArray<Offer> known = [.. own.Where(o => _items.ContainsKey(o.Item)).OrderBy(o => o.Item, StringComparer.Ordinal).ThenBy(o => o.Supplier, StringComparer.Ordinal).ThenBy(o => o.PackSize)];
        var priced = known.Select(o => o.Item).ToHashSet(StringComparer.Ordinal);
        var replaced = known.Select(o => (o.Item, o.Supplier, o.PackSize)).ToHashSet();
        ImmutableArray<Offer> offers =
        [
            .. _all.Offers.Where(o => !(o.IsSample && priced.Contains(o.Item)) && !replaced.Contains((o.Item, o.Supplier, o.PackSize))),
            .. known,
        ];
        var text = string.Join('\n', known.Select(o => FormattableString.Invariant($"{o.Item} {o.Supplier} {o.PackSize} {o.Price.ToDollars()} {o.Make} {o.Series} {o.QuotedOn:yyyy-MM-dd} {o.ExpiresOn:yyyy-MM-dd} {o.Number} {o.Gtin}")).Prepend(Hash));
        return known.IsEmpty ? this : new PartsCatalogue(Items, Boxes, _kits, _all.Labor, offers, HashOf(text));
    }

    /// <summary>All labor units, in file order.</summary>
    public ImmutableArray<LaborUnit> LaborUnits => _all.Labor;

    /// <summary>This catalogue with a firm's own labor units in the place of all of its.</summary>
    /// <param name="labor">The units.</param>
    public PartsCatalogue WithLabor(ImmutableArray<LaborUnit> labor)
    {
        var text = string.Join('\n', labor.Select(u => FormattableString.Invariant($"{u.Item} {u.Phase} {u.Hours} {u.Per}")).Prepend(Hash));
        return new PartsCatalogue(Items, Boxes, _kits, labor, _all.Offers, HashOf(text));
    }

    /// <summary>This catalogue with some of its offers alone; items, boxes and hours stay.</summary>
    /// <param name="keep">Which offers stay.</param>
    public PartsCatalogue WithOffers(Func<Offer, bool> keep)
    {
        ImmutableArray<Offer> kept = [.. _all.Offers.Where(keep)];
        return kept.Length == _all.Offers.Length ? this : new PartsCatalogue(Items, Boxes, _kits, _all.Labor, kept, Hash);
    }

    /// <summary>The key of the kit of a device on a circuit.</summary>
    public static string KitKey(DeviceKind kind, int amperes, bool weatherResistant)
    {
        var word = Words.Snake(kind);
        var weather = weatherResistant && kind.IsReceptacle() && kind is not DeviceKind.Receptacle240V ? "-wr" : "";
        var rated = kind.IsReceptacle() || kind is DeviceKind.SinglePoleSwitch or DeviceKind.ThreeWaySwitch or DeviceKind.FourWaySwitch;
        return rated ? $"{word}-{amperes}{weather}" : word;
    }

    private static string HashOf(IReadOnlyDictionary<string, string> files) =>
        HashOf(string.Join('\n', FileNames.Select(n => $"{n}\n{files[n].ReplaceLineEndings("\n")}")));

    private static string HashOf(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..16];
}
