using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Estimator.Engine.JobFiles;

namespace Estimator.Engine.Edits;

/// <summary>Values of a job as JSON text on one line, written one way only, so that the same value is the same text.</summary>
internal static class ValueText
{
    private const int Shown = 60;

    private static readonly JsonSerializerOptions OneLine = new(JobJson.Options) { WriteIndented = false };

    internal static string? Of(JsonNode? node) => node?.ToJsonString(OneLine);

    /// <summary>Reads a value as the job file would.</summary>
    /// <param name="text">JSON text; null for no value.</param>
    /// <param name="type">The type that reads it.</param>
    /// <param name="path">Where it goes in the job.</param>
    /// <param name="value">The value in canonical form; null for none.</param>
    internal static JobProblem? Read(string? text, Type type, string path, out JsonNode? value)
    {
        value = null;
        try
        {
            value = text is null ? null : JsonSerializer.SerializeToNode(JsonSerializer.Deserialize(text, type, OneLine), type, OneLine);
            return null;
        }
        catch (JsonException e)
        {
            var problem = JobProblem.Of(e, JobTree.File);
            return problem with
            {
                Path = path + problem.Path.TrimStart('$'),
                Found = e is JobJsonException || problem.Path != "$" ? problem.Found : Shortened(text!),
                Accepted = e is JobJsonException || problem.Path != "$" ? problem.Accepted : Words(type),
            };
        }
    }

    internal static string Shortened(string? text) => text is null ? "nothing" : text.Length > Shown ? string.Create(CultureInfo.InvariantCulture, $"{text[..Shown]}... ({text.Length} characters)") : text;

    /// <summary>What a field of a type accepts, in words.</summary>
    internal static string Words(Type type) => (Nullable.GetUnderlyingType(type) ?? type) switch
    {
        var t when t == typeof(int) => "a whole number",
        var t when t == typeof(decimal) => "a number",
        var t when t == typeof(bool) => "true or false",
        var t when t == typeof(DateOnly) => "a date such as \"2026-05-31\"",
        var t when t == typeof(string) => "text in quotes",
        _ => "a value in the form that the schema gives: print it with the verb schema",
    };
}
