using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Estimator.Engine.Rules;

/// <summary>A rule table: figures that someone could dispute, as data with their citation. One JSON file each, embedded in the assembly.</summary>
public sealed class RuleTable
{
    private static readonly JsonSerializerOptions Strict = new(JsonSerializerDefaults.Web)
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        PropertyNameCaseInsensitive = false,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
    };

    private readonly ImmutableDictionary<string, RuleRow> _byKey;

    private RuleTable(RuleTableFile file)
    {
        File = file;
        Rows = [.. file.Rows.Select(r => new RuleRow(this, r))];
        var twice = Rows.GroupBy(r => r.Key).FirstOrDefault(g => g.Count() > 1);
        if (twice is not null)
        {
            throw new InvalidDataException($"Rule table {file.Id} has two rows with the key {twice.Key}; keys are unique.");
        }

        _byKey = Rows.ToImmutableDictionary(r => r.Key);
    }

    /// <summary>Stable id, equal to the file's name.</summary>
    public string Id => File.Id;

    /// <summary>The file as it stands: title, unit, basis, source, effective.</summary>
    public RuleTableFile File { get; }

    /// <summary>The rows in order.</summary>
    public ImmutableArray<RuleRow> Rows { get; }

    /// <summary>The row with a key.</summary>
    /// <exception cref="KeyNotFoundException">The table has no such row.</exception>
    public RuleRow this[string key] => _byKey.TryGetValue(key, out var row)
        ? row
        : throw new KeyNotFoundException($"Rule table {Id} has no row {key}.");

    /// <summary>Whether a row with this key stands in the table.</summary>
    public bool Has(string key) => _byKey.ContainsKey(key);

    /// <summary>Ids of every embedded table, in order.</summary>
    public static IEnumerable<string> Ids => typeof(RuleTable).Assembly.GetManifestResourceNames()
        .Where(n => n.StartsWith("Rules/", StringComparison.Ordinal))
        .Select(n => n["Rules/".Length..^".json".Length])
        .Order(StringComparer.Ordinal);

    /// <summary>Reads an embedded table.</summary>
    /// <exception cref="InvalidDataException">The table is not embedded, has an unknown key, or lacks a required one.</exception>
    public static RuleTable Load(string id)
    {
        using var stream = typeof(RuleTable).Assembly.GetManifestResourceStream($"Rules/{id}.json")
            ?? throw new InvalidDataException($"There is no rule table {id}.");
        using var reader = new StreamReader(stream);
        return Read(id, reader.ReadToEnd());
    }

    /// <summary>Reads a table from its text.</summary>
    /// <exception cref="InvalidDataException">The text has an unknown key or lacks a required one.</exception>
    public static RuleTable Read(string id, string json)
    {
        try
        {
            var file = JsonSerializer.Deserialize<RuleTableFile>(json, Strict) ?? throw new InvalidDataException($"Rule table {id} is empty.");
            return file.Id == id
                ? new RuleTable(file)
                : throw new InvalidDataException($"Rule table {id} calls itself {file.Id}.");
        }
        catch (JsonException e)
        {
            throw new InvalidDataException($"Rule table {id}: {e.Message}", e);
        }
    }
}
