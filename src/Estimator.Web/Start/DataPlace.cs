namespace Estimator.Web.Start;

/// <summary>Where jobs are kept: a PostgreSQL server by its connection string, or else SQLite in a folder of the user's own.</summary>
/// <param name="ConnectionString">How the server is reached; null for the embedded database.</param>
/// <param name="Folder">The folder of the embedded database.</param>
public sealed record DataPlace(string? ConnectionString, string Folder)
{
    /// <summary>Name of the connection string, in <c>ConnectionStrings</c>.</summary>
    public const string ConnectionName = "Estimator";

    /// <summary>Setting that names another folder for the embedded database: <c>--data-folder</c>.</summary>
    public const string FolderSetting = "data-folder";

    /// <summary>Whether the embedded database is used.</summary>
    public bool Embedded => ConnectionString is null;

    /// <summary>File of the embedded database.</summary>
    public string File => Path.Combine(Folder, "estimator.db");

    /// <summary>What a person is told at start.</summary>
    public string Sentence => Embedded ? $"Jobs are kept in {File}" : "Jobs are kept on the PostgreSQL server of the connection string";

    /// <summary>Reads it from the settings.</summary>
    public static DataPlace Of(IConfiguration settings)
    {
        var connection = settings.GetConnectionString(ConnectionName);
        var folder = settings[FolderSetting] is { Length: > 0 } own
            ? Path.GetFullPath(own)
            : Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create), "wiring-estimator");
        return new DataPlace(string.IsNullOrWhiteSpace(connection) ? null : connection, folder);
    }
}
