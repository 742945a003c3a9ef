using System.Collections.Immutable;
using Estimator.Data.Companies;
using Estimator.Data.Databases;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Prices;

/// <summary>Keeps the company's local prices: one for each item, supplier and pack.</summary>
public sealed class LocalPriceStore
{
    private readonly IDbContextFactory<EstimatorContext> _contexts;
    private readonly CurrentCompany _company;

    internal LocalPriceStore(IDbContextFactory<EstimatorContext> contexts, CurrentCompany company) => (_contexts, _company) = (contexts, company);

    /// <summary>All local prices, by item, supplier and pack.</summary>
    /// <param name="token">Ends the wait.</param>
    public async Task<ImmutableArray<LocalPrice>> ListAsync(CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        var rows = await db.LocalPrices.AsNoTracking().ToListAsync(token);
        return
        [
            .. rows.Select(Price).OrderBy(p => p.Item, StringComparer.Ordinal).ThenBy(p => p.Supplier, StringComparer.Ordinal).ThenBy(p => p.PackSize),
        ];
    }

    /// <summary>Saves a price, new or changed, unless somebody else changed it since it was read.</summary>
    /// <param name="price">The price, with the version that it was read at.</param>
    /// <param name="token">Ends the wait.</param>
    /// <exception cref="ArgumentException">A field is empty or beyond <see cref="PriceLimits"/>, or the price was removed meanwhile.</exception>
    public async Task<Saving<LocalPrice>> SaveAsync(LocalPrice price, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(price);
        Check(price);
        var (item, supplier) = (StorableText.Of(price.Item), StorableText.Of(price.Supplier));
        await using (var db = await _contexts.CreateDbContextAsync(token))
        {
            var row = await db.LocalPrices.SingleOrDefaultAsync(r => r.Item == item && r.Supplier == supplier && r.PackSize == price.PackSize, token);
            if (row is null)
            {
                row = new LocalPriceRow { CompanyId = _company.Id, Item = item, Supplier = supplier, PackSize = price.PackSize, Version = 1 };
                db.LocalPrices.Add(row);
            }
            else if (row.Version != price.Version)
            {
                return new Saving<LocalPrice>(false, Price(row));
            }

            (row.PriceE4, row.AsOf, row.Note) = (Scaled.ToE4(price.Price), price.AsOf, StorableText.Of(price.Note));
            try
            {
                await db.SaveChangesAsync(token);
                return new Saving<LocalPrice>(true, Price(row));
            }
            catch (DbUpdateException e) when (LostRace.Is(e))
            {
                // What the other one saved is read below, in a context of its own.
            }
        }

        var stored = (await ListAsync(token)).SingleOrDefault(p => p.Item == item && p.Supplier == supplier && p.PackSize == price.PackSize)
            ?? throw new ArgumentException($"The price of {price.Item} at {price.Supplier} was removed meanwhile; save it as a new one.", nameof(price));
        return new Saving<LocalPrice>(false, stored);
    }

    /// <summary>Removes a price; one that is gone already is no error.</summary>
    /// <param name="price">The price, by item, supplier and pack.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task RemoveAsync(LocalPrice price, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(price);
        await using var db = await _contexts.CreateDbContextAsync(token);
        await db.LocalPrices.Where(r => r.Item == price.Item && r.Supplier == price.Supplier && r.PackSize == price.PackSize).ExecuteDeleteAsync(token);
    }

    private static void Check(LocalPrice price)
    {
        FieldLimits.Text(price.Item, 1, PriceLimits.Name, nameof(price.Item));
        FieldLimits.Text(price.Supplier, 1, PriceLimits.Name, nameof(price.Supplier));
        FieldLimits.Text(price.Note, 0, PriceLimits.Note, nameof(price.Note));
        if (price.PackSize is < 1 or > PriceLimits.Pack)
        {
            throw new ArgumentException($"PackSize is {price.PackSize}; 1 to {PriceLimits.Pack} is accepted.", nameof(price));
        }

        if (price.Price.ToDollars() is < 0 or > PriceLimits.Dollars)
        {
            throw new ArgumentException($"Price is {price.Price}; $0 to ${PriceLimits.Dollars} is accepted.", nameof(price));
        }
    }

    private static LocalPrice Price(LocalPriceRow row) => new()
    {
        Item = row.Item,
        Supplier = row.Supplier,
        PackSize = row.PackSize,
        Price = Scaled.MoneyFromE4(row.PriceE4),
        AsOf = row.AsOf,
        Note = row.Note,
        Version = row.Version,
    };
}
