using System.Collections.Immutable;
using Estimator.Data.Companies;
using Estimator.Data.Databases;
using Estimator.Engine.Measures;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Suppliers;

/// <summary>Keeps the company's suppliers and the terms on which each delivers.</summary>
public sealed class SupplierStore
{
    private readonly IDbContextFactory<EstimatorContext> _contexts;
    private readonly CurrentCompany _company;

    internal SupplierStore(IDbContextFactory<EstimatorContext> contexts, CurrentCompany company) => (_contexts, _company) = (contexts, company);

    /// <summary>All suppliers, by name.</summary>
    /// <param name="token">Ends the wait.</param>
    public async Task<ImmutableArray<Supplier>> ListAsync(CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        var rows = await db.Suppliers.AsNoTracking().ToListAsync(token);
        return [.. rows.Select(SupplierRows.Supplier).OrderBy(s => s.Name, StringComparer.OrdinalIgnoreCase).ThenBy(s => s.Id)];
    }

    /// <summary>Saves a supplier, new or changed, unless somebody else changed it since it was read.</summary>
    /// <param name="supplier">The supplier, with the version that it was read at.</param>
    /// <param name="token">Ends the wait.</param>
    /// <exception cref="ArgumentException">A field is beyond <see cref="SupplierLimits"/>, another supplier has the name, or there is no such supplier.</exception>
    public async Task<Saving<Supplier>> SaveAsync(Supplier supplier, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(supplier);
        Check(supplier);
        await using (var db = await _contexts.CreateDbContextAsync(token))
        {
            var name = StorableText.Of(supplier.Name.Trim());
            if (await db.Suppliers.AnyAsync(r => r.Name == name && r.Id != supplier.Id, token))
            {
                throw Taken(name);
            }

            var row = supplier.Id == 0 ? null : await db.Suppliers.SingleOrDefaultAsync(r => r.Id == supplier.Id, token) ?? throw Gone(supplier);
            if (row is null)
            {
                var last = await db.Suppliers.MaxAsync(r => (int?)r.Id, token) ?? 0;
                row = new SupplierRow { CompanyId = _company.Id, Id = last + 1, Name = name, Version = 1 };
                db.Suppliers.Add(row);
            }
            else if (row.Version != supplier.Version)
            {
                return new Saving<Supplier>(false, SupplierRows.Supplier(row));
            }

            SupplierRows.Put(row, supplier);
            try
            {
                await db.SaveChangesAsync(token);
                return new Saving<Supplier>(true, SupplierRows.Supplier(row));
            }
            catch (DbUpdateException e) when (LostRace.Is(e))
            {
                // What the other one saved is read below, in a context of its own.
            }
        }

        // A new one that lost the race for its number or its name tries again: the name may be taken now.
        return supplier.Id == 0
            ? await SaveAsync(supplier, token)
            : new Saving<Supplier>(false, (await ListAsync(token)).SingleOrDefault(s => s.Id == supplier.Id) ?? throw Gone(supplier));
    }

    private static ArgumentException Gone(Supplier supplier) => new($"There is no supplier {supplier.Id}.", nameof(supplier));

    private static ArgumentException Taken(string name) => new($"Name: another supplier is called {name}; a name that no other has is accepted.", nameof(name));

    private static void Check(Supplier supplier)
    {
        FieldLimits.Text(supplier.Name, 1, SupplierLimits.Name, nameof(supplier.Name));
        FieldLimits.Text(supplier.Account, 0, SupplierLimits.Name, nameof(supplier.Account));
        FieldLimits.Text(supplier.Contact, 0, SupplierLimits.Name, nameof(supplier.Contact));
        FieldLimits.Text(supplier.Note, 0, SupplierLimits.Note, nameof(supplier.Note));
        Dollars(supplier.Delivery, nameof(supplier.Delivery));
        Dollars(supplier.Minimum, nameof(supplier.Minimum));
        Dollars(supplier.FreeFrom ?? Money.Zero, nameof(supplier.FreeFrom));
    }

    private static void Dollars(Money money, string field)
    {
        if (money.ToDollars() is < 0 or > SupplierLimits.Dollars)
        {
            throw new ArgumentException($"{field} is {money}; $0 to ${SupplierLimits.Dollars} is accepted.", field);
        }
    }
}
