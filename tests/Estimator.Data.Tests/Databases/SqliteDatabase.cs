using Estimator.Data.Databases;
using Microsoft.Data.Sqlite;

namespace Estimator.Data.Tests.Databases;

/// <summary>A SQLite file in a temporary folder.</summary>
public sealed class SqliteDatabase : TestDatabase
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("estimator-data-");

    public override string AddressText => Path.Combine(_folder.FullName, "jobs.sqlite");

    public override DatabaseAddress Address => DatabaseAddress.Sqlite(AddressText);

    public override ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public override ValueTask DisposeAsync()
    {
        SqliteConnection.ClearAllPools();
        _folder.Delete(recursive: true);
        return ValueTask.CompletedTask;
    }
}
