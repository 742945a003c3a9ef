using Estimator.Data.Databases;
using Estimator.Data.Jobs;
using Estimator.Engine.House;
using Estimator.TestKit;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Data.Tests.Databases;

/// <summary>A program that was killed while it migrated a SQLite file leaves a lock row; the next start must not wait for it for ever.</summary>
public sealed class StaleLockTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("2020-01-01 00:00:00+00:00")]
    [InlineData("2999-01-01 00:00:00+00:00")]
    public async Task Run_WithALockRowLeftBehind_Starts(string at)
    {
        await using var database = new SqliteDatabase();
        await using var services = database.Services();
        await services.GetRequiredService<DatabaseStart>().RunAsync(Token);
        await using (var db = await services.GetRequiredService<IDbContextFactory<EstimatorContext>>().CreateDbContextAsync(Token))
        {
            await db.Database.ExecuteSqlAsync($"INSERT INTO \"__EFMigrationsLock\" VALUES (1, {at})", Token);
        }

        await services.GetRequiredService<DatabaseStart>().RunAsync(Token).WaitAsync(Patience, Token);
    }

    [Fact]
    public async Task Run_AfterStartsThatWereKilled_MakesAWholeDatabase()
    {
        await using var database = new SqliteDatabase();
        var random = new Random(7);
        for (var kill = 0; kill < 10; kill++)
        {
            using var editor = EditorProcess.Start("start", database.AddressText);
            Assert.Equal("ready", await editor.LineAsync());
            await Task.Delay(random.Next(0, 700), Token);
            await editor.KillAsync();
        }

        await using var services = database.Services();
        await services.GetRequiredService<DatabaseStart>().RunAsync(Token).WaitAsync(Patience, Token);
        await services.GetRequiredService<JobStore>().CreateAsync(SmallJobs.OneRoom(RoomKind.Hall), "a tester", Token);
    }

    [Fact]
    public async Task Run_WhileAnotherStarts_WaitsForItAndGivesUpWhenTold()
    {
        await using var database = new SqliteDatabase();
        await using var services = database.Services();
        await using var held = await StartLock.TakeAsync(database.AddressText, Token);
        using var giveUp = new CancellationTokenSource(TimeSpan.FromMilliseconds(300));
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => services.GetRequiredService<DatabaseStart>().RunAsync(giveUp.Token));
    }
}
