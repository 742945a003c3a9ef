using Estimator.Data.Companies;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Databases;

/// <summary>Brings the database to the form of this program, before anything else uses it.</summary>
public sealed class DatabaseStart
{
    private readonly IDbContextFactory<EstimatorContext> _contexts;
    private readonly DatabaseAddress _address;

    internal DatabaseStart(IDbContextFactory<EstimatorContext> contexts, DatabaseAddress address) => (_contexts, _address) = (contexts, address);

    /// <summary>Makes the database where there is none, applies the migrations that it lacks, and makes the company's row.</summary>
    /// <param name="token">Ends the wait.</param>
    /// <exception cref="InvalidDataException">A newer program made the database; nothing was changed.</exception>
    public async Task RunAsync(CancellationToken token = default)
    {
        if (_address.File is not { } file)
        {
            await using (await ServerStartLock.TakeAsync(_contexts, token))
            {
                await MigrateAsync(token);
            }

            return;
        }

        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        await using (await StartLock.TakeAsync(file, token))
        {
            await StaleMigrationLock.ClearAsync(_contexts, token);
            await MigrateAsync(token);
        }
    }

    private async Task MigrateAsync(CancellationToken token)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        await RefuseNewerAsync(db, token);
        await db.Database.MigrateAsync(token);
        if (!await db.Companies.AnyAsync(token))
        {
            db.Companies.Add(new CompanyRow { CompanyId = db.CompanyId, Version = 1 });
            try
            {
                await db.SaveChangesAsync(token);
            }
            catch (DbUpdateException e) when (LostRace.Is(e))
            {
                // Another program that started at the same time made the row.
            }
        }
    }

    private async Task RefuseNewerAsync(EstimatorContext db, CancellationToken token)
    {
        if (!await db.Database.CanConnectAsync(token))
        {
            return;
        }

        var known = db.Database.GetMigrations().ToHashSet(StringComparer.Ordinal);
        var unknown = (await db.Database.GetAppliedMigrationsAsync(token)).Where(m => !known.Contains(m)).ToList();
        if (unknown.Count > 0)
        {
            throw new InvalidDataException(
                $"{_address}: the database has {string.Join(", ", unknown)}, which this program does not know: a newer program made it. Update this program, or open a copy from before.");
        }
    }
}
