using System.Collections.Immutable;
using System.Text.Json;
using Estimator.Data.Databases;
using Estimator.Data.Jobs;
using Estimator.Engine.Purchase.PriceFiles;

namespace Estimator.Data.Suppliers;

/// <summary>Between suppliers with their prices and their rows.</summary>
internal static class SupplierRows
{
    internal static Supplier Supplier(SupplierRow r) => new()
    {
        Id = r.Id,
        Name = r.Name,
        Account = r.Account,
        Contact = r.Contact,
        Note = r.Note,
        Way = Word.Read<SupplyWay>(r.Way),
        Delivery = Scaled.MoneyFromE4(r.DeliveryE4),
        Minimum = Scaled.MoneyFromE4(r.MinimumE4),
        FreeFrom = r.FreeFromE4 is { } free ? Scaled.MoneyFromE4(free) : null,
        Active = r.Active,
        Matching = ReadMatching(r.MatchingJson),
        Version = r.Version,
    };

    internal static void Put(SupplierRow row, Supplier supplier)
    {
        row.Name = StorableText.Of(supplier.Name.Trim());
        row.Account = StorableText.Of(supplier.Account.Trim());
        row.Contact = StorableText.Of(supplier.Contact.Trim());
        row.Note = StorableText.Of(supplier.Note.Trim());
        row.Way = Word.Of(supplier.Way);
        row.DeliveryE4 = Scaled.ToE4(supplier.Delivery);
        row.MinimumE4 = Scaled.ToE4(supplier.Minimum);
        row.FreeFromE4 = supplier.FreeFrom is { } free ? Scaled.ToE4(free) : null;
        row.Active = supplier.Active;
        row.MatchingJson = WriteMatching(supplier.Matching);
    }

    internal static string WriteMatching(ColumnMatching matching) =>
        JsonSerializer.Serialize(matching.Headings.ToDictionary(h => Word.Of(h.Key), h => StorableText.Of(h.Value), StringComparer.Ordinal));

    internal static PriceImport Import(PriceImportRow r) => new(r.SupplierId, r.Number, r.FileName, r.FileHash, r.Who, JobRows.Utc(r.AtUtcTicks), r.Prices, r.Withdrawn);

    internal static SupplierPrice Price(SupplierPriceRow r, string supplier) => new()
    {
        SupplierId = r.SupplierId,
        Supplier = supplier,
        Item = r.Item,
        PackSize = r.PackSize,
        Price = r.PriceE4 is { } price ? Scaled.MoneyFromE4(price) : null,
        QuotedOn = r.QuotedOn,
        ExpiresOn = r.ExpiresOn,
        Number = r.Number,
        Gtin = r.Gtin,
        Make = r.Make,
        Series = r.Series,
        Import = r.Import,
        FileRow = r.FileRow,
    };

    internal static SupplierPriceRow Row(PackChange change, NewPrices prices, long company, int import) => new()
    {
        CompanyId = company,
        SupplierId = prices.SupplierId,
        Item = change.Item,
        PackSize = change.PackSize,
        Import = import,
        FileRow = change.Row?.Row ?? 0,
        PriceE4 = change.New is { } price ? Scaled.ToE4(price) : null,
        QuotedOn = change.Row?.QuotedOn ?? prices.ReadOn,
        ExpiresOn = change.Row?.ExpiresOn,
        Number = StorableText.Of(change.Row?.Number ?? ""),
        Gtin = change.Row?.Gtin ?? "",
        Make = StorableText.Of(change.Row?.Make ?? ""),
        Series = StorableText.Of(change.Row?.Series ?? ""),
    };

    private static ColumnMatching ReadMatching(string json) => new(JsonSerializer.Deserialize<Dictionary<string, string>>(json)!
        .ToImmutableSortedDictionary(h => Word.Read<PriceColumn>(h.Key), h => h.Value));
}
