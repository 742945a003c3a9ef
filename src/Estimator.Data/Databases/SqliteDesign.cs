using Estimator.Data.Companies;
using Microsoft.EntityFrameworkCore.Design;

namespace Estimator.Data.Databases;

/// <summary>Lets the migration tool make the SQLite context; it connects to nothing.</summary>
internal sealed class SqliteDesign : IDesignTimeDbContextFactory<SqliteContext>
{
    public SqliteContext CreateDbContext(string[] args) =>
        (SqliteContext)new ContextFactory(DatabaseAddress.Sqlite("design.sqlite"), CurrentCompany.Own).CreateDbContext();
}
