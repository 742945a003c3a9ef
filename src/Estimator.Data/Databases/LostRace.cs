using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace Estimator.Data.Databases;

/// <summary>Tells a write that another writer was faster than from a write that is wrong.</summary>
internal static class LostRace
{
    // SQLite result codes "constraint: primary key" and "constraint: unique". Source: sqlite.org/rescode.html.
    private const int SqlitePrimaryKey = 1555;
    private const int SqliteUnique = 2067;

    internal static bool Is(DbUpdateException e) => e is DbUpdateConcurrencyException || e.InnerException switch
    {
        SqliteException sqlite => sqlite.SqliteExtendedErrorCode is SqlitePrimaryKey or SqliteUnique,
        PostgresException postgres => postgres.SqlState is PostgresErrorCodes.UniqueViolation or PostgresErrorCodes.SerializationFailure
            or PostgresErrorCodes.DeadlockDetected,
        _ => false,
    };
}
