using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Storage;
using Npgsql;

namespace Estimator.Data.Databases;

/// <summary>Lets one program at a time start on a database of a server.</summary>
/// <remarks>
/// The framework's own lock ends with the transaction of each migration, so two programs could apply the second one. This one is the session's: the server
/// gives it back when its holder ends, however it ends.
/// </remarks>
internal sealed class ServerStartLock : IAsyncDisposable
{
    // Any number that nothing else in the database locks.
    private const long Key = 7_245_310_066;
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(2);

    private readonly EstimatorContext _db;

    private ServerStartLock(EstimatorContext db) => _db = db;

    /// <summary>Waits for the lock. Where there is no database yet it is made first.</summary>
    internal static async Task<ServerStartLock> TakeAsync(IDbContextFactory<EstimatorContext> contexts, CancellationToken token)
    {
        var db = await contexts.CreateDbContextAsync(token);
        try
        {
            await MakeDatabaseAsync(db, token);
            db.Database.SetCommandTimeout(Longest);
            await db.Database.OpenConnectionAsync(token);
            await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_lock({Key})", token);
            return new ServerStartLock(db);
        }
        catch
        {
            await db.DisposeAsync();
            throw;
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await _db.Database.ExecuteSqlAsync($"SELECT pg_advisory_unlock({Key})");
        await _db.DisposeAsync();
    }

    private static async Task MakeDatabaseAsync(EstimatorContext db, CancellationToken token)
    {
        var creator = db.GetService<IRelationalDatabaseCreator>();
        if (await creator.ExistsAsync(token))
        {
            return;
        }

        try
        {
            await creator.CreateAsync(token);
        }
        catch (PostgresException e) when (e.SqlState is PostgresErrorCodes.DuplicateDatabase or PostgresErrorCodes.UniqueViolation)
        {
            // Another program that started at the same time made it.
        }
    }
}
