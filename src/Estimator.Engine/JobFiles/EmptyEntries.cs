using System.Collections.Immutable;
using System.Text.Json.Nodes;

namespace Estimator.Engine.JobFiles;

/// <summary>Finds entries of lists that are null: the serializer lets them pass, and nothing in a job can be made of them.</summary>
internal static class EmptyEntries
{
    private const int Most = 50;

    internal static ImmutableArray<JobProblem> Of(JsonNode file, string fileName) =>
        [.. Paths(file).Take(Most).Select(path => new JobProblem(fileName, path, "null", "an entry of the list, or none: leave the null out"))];

    private static IEnumerable<string> Paths(JsonNode? node) => node switch
    {
        JsonArray list => list.SelectMany((entry, i) => entry is null ? [$"{list.GetPath()}[{i}]"] : Paths(entry)),
        JsonObject thing => thing.SelectMany(field => Paths(field.Value)),
        _ => [],
    };
}
