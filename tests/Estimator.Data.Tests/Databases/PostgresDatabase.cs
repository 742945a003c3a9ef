using Estimator.Data.Databases;
using Npgsql;

namespace Estimator.Data.Tests.Databases;

/// <summary>A database of its own on the server that ESTIMATOR_POSTGRES names; dropped at the end.</summary>
public sealed class PostgresDatabase : TestDatabase
{
    private const string Variable = "ESTIMATOR_POSTGRES";
    private readonly string _name = $"estimator_{Guid.NewGuid():N}";

    public override string AddressText => new NpgsqlConnectionStringBuilder(Server) { Database = _name, IncludeErrorDetail = true }.ConnectionString;

    public override DatabaseAddress Address => DatabaseAddress.Postgres(AddressText);

    private static string Server => Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } server
        ? server
        : throw new InvalidOperationException(
            $"{Variable} is not set: set it to the connection string of a PostgreSQL server whose user may create databases, or run tests/run.sh, "
            + "which starts a server of its own where PostgreSQL is installed (on Debian: apt-get install postgresql).");

    public override ValueTask InitializeAsync() => RunAsync($"CREATE DATABASE {_name}");

    public override ValueTask DisposeAsync()
    {
        NpgsqlConnection.ClearAllPools();
        return RunAsync($"DROP DATABASE IF EXISTS {_name} WITH (FORCE)");
    }

    private static async ValueTask RunAsync(string sql)
    {
        await using var connection = new NpgsqlConnection(Server);
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand(sql, connection);
        await command.ExecuteNonQueryAsync();
    }
}
