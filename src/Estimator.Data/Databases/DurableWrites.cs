using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Estimator.Data.Databases;

/// <summary>Has SQLite write a commit through to the disk before it answers, so that what was acknowledged outlives a kill and a power cut.</summary>
/// <remarks>Source: SQLite documentation, "PRAGMA synchronous": with a write-ahead log, NORMAL may lose the last commits in a power cut, FULL may not.</remarks>
internal sealed class DurableWrites : DbConnectionInterceptor
{
    private const string Full = "PRAGMA synchronous = FULL;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Full;
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = Full;
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
