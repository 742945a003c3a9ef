using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Databases;

/// <summary>Clears the row that EF Core leaves in its lock table when a program is killed while it migrates; every later start would wait for it for ever.</summary>
/// <remarks>To be called by the holder of <see cref="StartLock"/> alone: then no other program migrates, and any row is a dead one's.</remarks>
internal static class StaleMigrationLock
{
    internal static async Task ClearAsync(IDbContextFactory<EstimatorContext> contexts, CancellationToken token)
    {
        await using var db = await contexts.CreateDbContextAsync(token);
        if (!await db.Database.CanConnectAsync(token))
        {
            return;
        }

        var tables = await db.Database.SqlQuery<int>($"SELECT COUNT(*) AS \"Value\" FROM sqlite_master WHERE name = '__EFMigrationsLock'").SingleAsync(token);
        if (tables > 0)
        {
            await db.Database.ExecuteSqlAsync($"DELETE FROM \"__EFMigrationsLock\"", token);
        }
    }
}
