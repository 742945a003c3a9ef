using System.Collections.Immutable;
using Estimator.Data.Companies;
using Estimator.Data.Databases;
using Estimator.Engine.Purchase.PriceFiles;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Suppliers;

/// <summary>Keeps every price that a price file ever said, and which item a supplier's number or a GTIN means.</summary>
public sealed class SupplierPriceStore
{
    // Rows that are handed to the database at once, so that a long file does not stand in memory twice.
    private const int RowsAtOnce = 500;

    private readonly IDbContextFactory<EstimatorContext> _contexts;
    private readonly CurrentCompany _company;
    private readonly TimeProvider _clock;

    internal SupplierPriceStore(IDbContextFactory<EstimatorContext> contexts, CurrentCompany company, TimeProvider clock) =>
        (_contexts, _company, _clock) = (contexts, company, clock);

    /// <summary>The prices in force of the suppliers that the company buys from, by item, supplier and pack; withdrawn ones are not among them.</summary>
    /// <param name="token">Ends the wait.</param>
    public async Task<ImmutableArray<SupplierPrice>> CurrentAsync(CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        var rows = await (
            from price in db.SupplierPrices.AsNoTracking()
            join supplier in db.Suppliers on price.SupplierId equals supplier.Id
            where supplier.Active && price.PriceE4 != null
                && price.Import == db.SupplierPrices.Where(p => p.SupplierId == price.SupplierId && p.Item == price.Item && p.PackSize == price.PackSize).Max(p => p.Import)
            select new { price, supplier.Name }).ToListAsync(token);
        return [.. rows.Select(r => SupplierRows.Price(r.price, r.Name)).OrderBy(p => p.Item, StringComparer.Ordinal).ThenBy(p => p.Supplier, StringComparer.Ordinal).ThenBy(p => p.PackSize)];
    }

    /// <summary>The prices in force of one supplier, whether or not the company buys there now.</summary>
    /// <param name="supplierId">The supplier.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task<ImmutableArray<KnownPrice>> KnownAsync(int supplierId, CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        var rows = await db.SupplierPrices.AsNoTracking()
            .Where(p => p.SupplierId == supplierId && p.PriceE4 != null && p.Import == db.SupplierPrices.Where(q => q.SupplierId == supplierId && q.Item == p.Item && q.PackSize == p.PackSize).Max(q => q.Import))
            .Select(p => new { p.Item, p.PackSize, p.PriceE4 }).ToListAsync(token);
        return [.. rows.Select(r => new KnownPrice(r.Item, r.PackSize, Scaled.MoneyFromE4(r.PriceE4!.Value)))];
    }

    /// <summary>Every price that an item ever had at any supplier, newest first.</summary>
    /// <param name="item">The item.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task<ImmutableArray<(SupplierPrice Price, PriceImport From)>> HistoryAsync(string item, CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        var rows = await (
            from price in db.SupplierPrices.AsNoTracking()
            join supplier in db.Suppliers on price.SupplierId equals supplier.Id
            join import in db.PriceImports on new { price.SupplierId, Number = price.Import } equals new { import.SupplierId, import.Number }
            where price.Item == item
            orderby import.AtUtcTicks descending, price.SupplierId, price.PackSize
            select new { price, supplier.Name, import }).ToListAsync(token);
        return [.. rows.Select(r => (SupplierRows.Price(r.price, r.Name), SupplierRows.Import(r.import)))];
    }

    /// <summary>The price files of a supplier, newest first.</summary>
    /// <param name="supplierId">The supplier.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task<ImmutableArray<PriceImport>> ImportsAsync(int supplierId, CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        return [.. (await db.PriceImports.AsNoTracking().Where(r => r.SupplierId == supplierId).OrderByDescending(r => r.Number).ToListAsync(token)).Select(SupplierRows.Import)];
    }

    /// <summary>Which item a supplier's numbers and the company's GTINs mean.</summary>
    /// <param name="supplierId">The supplier.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task<ItemLinks> LinksAsync(int supplierId, CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        return new ItemLinks(
            (await db.SupplierNumbers.AsNoTracking().Where(r => r.SupplierId == supplierId).ToListAsync(token)).ToImmutableDictionary(r => r.Number, r => r.Item, StringComparer.Ordinal),
            (await db.ItemGtins.AsNoTracking().ToListAsync(token)).ToImmutableDictionary(r => r.Gtin, r => r.Item, StringComparer.Ordinal));
    }

    /// <summary>Writes a price file, all of it or nothing, and remembers its matching, numbers and GTINs.</summary>
    /// <param name="prices">What is written.</param>
    /// <param name="token">Ends the wait; nothing is written then.</param>
    /// <returns>The file; null where another file of the supplier was written since the preview, and nothing was written.</returns>
    public async Task<PriceImport?> WriteAsync(NewPrices prices, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(prices);
        await using var db = await _contexts.CreateDbContextAsync(token);
        await using var transaction = await db.Database.BeginTransactionAsync(token);
        try
        {
            var supplier = await db.Suppliers.SingleAsync(r => r.Id == prices.SupplierId, token);
            if ((await db.PriceImports.Where(r => r.SupplierId == prices.SupplierId).MaxAsync(r => (int?)r.Number, token) ?? 0) != prices.After)
            {
                return null;
            }

            supplier.MatchingJson = SupplierRows.WriteMatching(prices.Matching);
            var import = new PriceImportRow
            {
                CompanyId = _company.Id,
                SupplierId = prices.SupplierId,
                Number = prices.After + 1,
                FileName = StorableText.Of(prices.FileName.Length <= SupplierLimits.Name ? prices.FileName : prices.FileName[^SupplierLimits.Name..]),
                FileHash = prices.FileHash,
                Who = StorableText.Of(prices.Who),
                AtUtcTicks = _clock.GetUtcNow().UtcTicks,
                Prices = prices.Changes.Count(c => c.New is not null),
                Withdrawn = prices.Changes.Count(c => c.New is null),
            };
            db.PriceImports.Add(import);
            await db.SaveChangesAsync(token);
            await RememberAsync(db, prices, token);
            foreach (var part in prices.Changes.Chunk(RowsAtOnce))
            {
                db.SupplierPrices.AddRange(part.Select(c => SupplierRows.Row(c, prices, _company.Id, import.Number)));
                await db.SaveChangesAsync(token);
                db.ChangeTracker.Clear();
            }

            await transaction.CommitAsync(token);
            return SupplierRows.Import(import);
        }
        catch (DbUpdateException e) when (LostRace.Is(e))
        {
            return null;
        }
    }

    private async Task RememberAsync(EstimatorContext db, NewPrices prices, CancellationToken token)
    {
        var numbers = await db.SupplierNumbers.Where(r => r.SupplierId == prices.SupplierId).ToDictionaryAsync(r => r.Number, StringComparer.Ordinal, token);
        var gtins = await db.ItemGtins.ToDictionaryAsync(r => r.Gtin, StringComparer.Ordinal, token);
        foreach (var change in prices.Changes.Where(c => c.Row is not null))
        {
            var (number, gtin) = (StorableText.Of(change.Row!.Number), change.Row.Gtin);
            if (number.Length > 0 && numbers.TryGetValue(number, out var known))
            {
                known.Item = change.Item;
            }
            else if (number.Length > 0)
            {
                numbers[number] = db.SupplierNumbers.Add(new SupplierNumberRow { CompanyId = _company.Id, SupplierId = prices.SupplierId, Number = number, Item = change.Item }).Entity;
            }

            if (gtin.Length > 0 && gtins.TryGetValue(gtin, out var same))
            {
                same.Item = change.Item;
            }
            else if (gtin.Length > 0)
            {
                gtins[gtin] = db.ItemGtins.Add(new ItemGtinRow { CompanyId = _company.Id, Gtin = gtin, Item = change.Item }).Entity;
            }
        }

        await db.SaveChangesAsync(token);
        db.ChangeTracker.Clear();
    }
}
