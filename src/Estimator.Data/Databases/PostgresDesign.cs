using Estimator.Data.Companies;
using Microsoft.EntityFrameworkCore.Design;

namespace Estimator.Data.Databases;

/// <summary>Lets the migration tool make the PostgreSQL context; it connects to nothing.</summary>
internal sealed class PostgresDesign : IDesignTimeDbContextFactory<PostgresContext>
{
    public PostgresContext CreateDbContext(string[] args) =>
        (PostgresContext)new ContextFactory(DatabaseAddress.Postgres("Host=localhost;Database=design"), CurrentCompany.Own).CreateDbContext();
}
