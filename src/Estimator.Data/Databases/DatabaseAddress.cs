using Microsoft.Data.Sqlite;

namespace Estimator.Data.Databases;

/// <summary>Which database holds the jobs: a SQLite file on this machine, or a PostgreSQL server.</summary>
public sealed record DatabaseAddress
{
    private DatabaseAddress(string? file, string connection) => (File, Connection) = (file, connection);

    /// <summary>Full path of the SQLite file; null for PostgreSQL.</summary>
    public string? File { get; }

    /// <summary>The connection string.</summary>
    internal string Connection { get; }

    /// <summary>Jobs in a SQLite file. It is made at the first start, with its folder.</summary>
    /// <param name="path">Where the file is or shall be.</param>
    /// <exception cref="ArgumentException">The path is empty.</exception>
    public static DatabaseAddress Sqlite(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var file = Path.GetFullPath(path);
        return new DatabaseAddress(file, new SqliteConnectionStringBuilder { DataSource = file, ForeignKeys = true }.ConnectionString);
    }

    /// <summary>Jobs on a PostgreSQL server.</summary>
    /// <param name="connectionString">Npgsql's form: <c>Host=...;Database=...;Username=...;Password=...</c>.</param>
    /// <exception cref="ArgumentException">The text is empty or no connection string.</exception>
    public static DatabaseAddress Postgres(string connectionString)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(connectionString);
        return new DatabaseAddress(null, new Npgsql.NpgsqlConnectionStringBuilder(connectionString).ConnectionString);
    }

    /// <summary>What may be shown: never the password.</summary>
    public override string ToString()
    {
        if (File is not null)
        {
            return $"SQLite, {File}";
        }

        var server = new Npgsql.NpgsqlConnectionStringBuilder(Connection);
        return $"PostgreSQL, {server.Database} on {server.Host}:{server.Port}";
    }
}
