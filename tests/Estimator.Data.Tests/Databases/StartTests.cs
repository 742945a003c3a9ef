using Estimator.Data.Companies;
using Estimator.Data.Databases;
using Estimator.Data.Jobs;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Data.Tests.Databases;

/// <summary>How a program starts on a database, on either one.</summary>
public abstract class StartTests(TestDatabase database)
{
    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Run_ByManyAtTheSameTime_MakesTheDatabaseOnce()
    {
        await Task.WhenAll(Enumerable.Range(1, 8).Select(_ => Task.Run(StartAsync)));
        await using var services = database.Services();
        Assert.Equal("", (await services.GetRequiredService<CompanyStore>().LoadAsync(Token)).Name);
    }

    [Fact]
    public async Task Run_OnADatabaseOfANewerProgram_SaysSo()
    {
        await StartAsync();
        await using var services = database.Services();
        await using var db = Context(services);
        const string Newer = "29991231000000_Later";
        await db.Database.ExecuteSqlAsync($"INSERT INTO \"__EFMigrationsHistory\" (\"MigrationId\", \"ProductVersion\") VALUES ({Newer}, {"99"})", Token);
        var e = await Assert.ThrowsAsync<InvalidDataException>(StartAsync);
        await db.Database.ExecuteSqlAsync($"DELETE FROM \"__EFMigrationsHistory\" WHERE \"MigrationId\" = {Newer}", Token);
        Assert.Contains(Newer, e.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("Password", e.Message, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Model_AndMigrations_SayTheSame()
    {
        await using var services = database.Services();
        await using var db = Context(services);
        Assert.False(db.Database.HasPendingModelChanges());
    }

    [Fact]
    public async Task Migrations_OfBothDatabases_HaveTheSameNames()
    {
        await using var services = database.Services();
        await using var db = Context(services);
        using var sqlite = new SqliteDesign().CreateDbContext([]);
        Assert.Equal(Names(sqlite), Names(db));

        static IEnumerable<string> Names(EstimatorContext context) => context.Database.GetMigrations().Select(m => m.Split('_', 2)[1]);
    }

    [Fact]
    public async Task Tables_AllOfThem_AreHeldToTheCompany()
    {
        await using var services = database.Services();
        await using var db = Context(services);
        Assert.All(db.Model.GetEntityTypes(), table =>
        {
            Assert.NotEmpty(table.GetDeclaredQueryFilters());
            Assert.Equal(nameof(OwnedRow.CompanyId), table.FindPrimaryKey()!.Properties[0].Name);
        });
    }

    [Fact]
    public async Task Save_OfARowOfAnotherCompany_Throws()
    {
        await StartAsync();
        await using var services = database.Services();
        await using var db = Context(services);
        db.Companies.Add(new CompanyRow { CompanyId = 77 });
        await Assert.ThrowsAsync<InvalidOperationException>(() => db.SaveChangesAsync(Token));
    }

    private static EstimatorContext Context(IServiceProvider services) => services.GetRequiredService<IDbContextFactory<EstimatorContext>>().CreateDbContext();

    private async Task StartAsync()
    {
        await using var services = database.Services();
        await services.GetRequiredService<DatabaseStart>().RunAsync(Token);
        Assert.Empty(await services.GetRequiredService<JobStore>().ListAsync(JobFilter.All, Token));
    }
}
