using Estimator.Data.Companies;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Databases;

/// <summary>Makes a context for one operation, on the database of the address and for one company.</summary>
internal sealed class ContextFactory(DatabaseAddress address, CurrentCompany company) : IDbContextFactory<EstimatorContext>
{
    private static readonly RowRules Rules = new();
    private static readonly DurableWrites Durable = new();

    public EstimatorContext CreateDbContext() => address.File is null
        ? new PostgresContext(new DbContextOptionsBuilder<PostgresContext>().UseNpgsql(address.Connection).AddInterceptors(Rules).Options) { CompanyId = company.Id }
        : new SqliteContext(new DbContextOptionsBuilder<SqliteContext>().UseSqlite(address.Connection).AddInterceptors(Rules, Durable).Options) { CompanyId = company.Id };
}
