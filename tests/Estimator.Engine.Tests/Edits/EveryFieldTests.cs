using System.Text.Json;
using System.Text.Json.Nodes;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Edits;

/// <summary>Walks the schema of the job file over a job in which every field has a value, and edits each of them.</summary>
public sealed class EveryFieldTests
{
    // There is but one value of it.
    private const string Schema = ".schema";

    private static readonly string Text = File.ReadAllText(Path.Combine(TestData.Root, "jobs", "every-field.json"));

    private static readonly Dictionary<string, JsonNode> Forms = Leaves(JobSchema.Make(), "").Where(l => l.Path != Schema).ToDictionary(l => l.Path, l => l.Form, StringComparer.Ordinal);

    public static TheoryData<string> Fields() => [.. Forms.Keys];

    [Theory]
    [MemberData(nameof(Fields))]
    public void Field_OfTheSchema_IsReachedByAnEdit(string field)
    {
        var before = JobFile.Read(Text, "every-field.json").Job;
        var tree = JsonNode.Parse(JobFile.Write(before))!;
        var place = Places(tree, field.TrimStart('.').Split('.')).FirstOrDefault(p => p is not JsonArray { Count: 0 });
        Assert.True(place is not null, $"{field}: give it a value in every-field.json");
        place.ReplaceWith(Other(place, Forms[field]));
        var after = tree.Deserialize<Job>(JobJson.Options)!;

        var edit = JobEditing.Between(before, after, "e", field);
        Assert.NotEmpty(edit.Changes);
        var edited = JobTree.Of(before);
        Assert.All(edit.Changes, c => Assert.Null(ChangeMaking.Make(edited, c)));
        Assert.Null(edited.Read(out var job));
        Assert.Equal(JobFile.Write(after), JobFile.Write(job!));
        Assert.Equal(JobValidation.Problems(after, JobTree.File), JobEditing.Apply(before, edit).Problems);
    }

    private static IEnumerable<(string Path, JsonNode Form)> Leaves(JsonNode schema, string path)
    {
        var inner = schema["anyOf"] is JsonArray any ? any[0]! : schema;
        if (inner["properties"] is JsonObject properties)
        {
            return properties.SelectMany(p => Leaves(p.Value!, $"{path}.{p.Key}"));
        }

        return inner["items"] is JsonObject items && inner["minItems"] is null ? Leaves(items, $"{path}.[]")
            : inner["additionalProperties"] is JsonObject values ? Leaves(values, $"{path}.[]") : [(path, inner)];
    }

    private static List<JsonNode> Places(JsonNode? node, ReadOnlySpan<string> steps)
    {
        if (node is null || steps.IsEmpty)
        {
            return node is null ? [] : [node];
        }

        var inside = steps[0] != "[]" ? [node[steps[0]]] : node is JsonArray list ? list.ToArray() : ((JsonObject)node).Select(p => p.Value).ToArray();
        var found = new List<JsonNode>();
        foreach (var next in inside)
        {
            found.AddRange(Places(next, steps[1..]));
        }

        return found;
    }

    private static JsonNode Other(JsonNode value, JsonNode form) => value.GetValueKind() switch
    {
        JsonValueKind.True or JsonValueKind.False => !value.GetValue<bool>(),
        JsonValueKind.Number => value.GetValue<decimal>() + 1,
        JsonValueKind.Array when value[0] is JsonArray => new JsonArray([.. ((JsonArray)value).Skip(1).Select(p => p!.DeepClone()), new JsonArray("1'", "1' 1\"")]),
        JsonValueKind.Array => new JsonArray("1'", "1' 1\""),
        JsonValueKind.Object => new JsonObject { ["items.csv"] = "other" },
        _ when form["enum"] is JsonArray words => words.Select(w => w!.GetValue<string>()).First(w => w != value.GetValue<string>()),
        _ when value.GetValue<string>() is "overhead" => "underfloor",
        _ when form["pattern"] is not null => "1' 2\"",
        _ when form["format"]?.GetValue<string>() is "date" => "2026-01-02",
        _ => $"{value.GetValue<string>()} and more",
    };
}
