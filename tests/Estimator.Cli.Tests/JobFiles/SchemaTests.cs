using System.Text.Json;
using System.Text.Json.Nodes;
using Estimator.Engine.JobFiles;
using Estimator.TestKit;
using Json.Schema;

namespace Estimator.Cli.Tests.JobFiles;

public sealed class SchemaTests
{
    public static TheoryData<string> Jobs() => [.. Samples.Names, .. Directory.GetFiles(Path.Combine(TestData.Root, "jobs"), "*.json").Select(p => Path.GetFileName(p))];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Schema_OfJobFile_AcceptsSamplesAndFixtures(string job)
    {
        var text = Text(job);
        Assert.True(Valid(text));
        var read = JobFile.Read(text, job);
        Assert.True(read.Ok, string.Join('\n', read.Problems));
        Assert.Equal(JobFile.Write(read.Job), JobFile.Write(JobFile.Read(JobFile.Write(read.Job), job).Job));
    }

    [Theory]
    [InlineData("""{"schema":"estimator-job/1","id":"x","name":"x","levels":[],"panels":[],"colour":1}""")]
    [InlineData("""{"schema":"estimator-job/1","id":"x","name":"x","levels":[]}""")]
    [InlineData("""{"schema":"estimator-job/1","id":7,"name":"x","levels":[],"panels":[]}""")]
    public void Schema_OfJobFile_RefusesWrongFields(string json) => Assert.False(Valid(json));

    // Each is refused when the file is read, so the schema must not let it pass.
    [Theory]
    [InlineData("$.levels[0].rooms[0].corners", """["1'"]""")]
    [InlineData("$.levels[0].rooms[0].corners", """[["1'","2'","3'"]]""")]
    [InlineData("$.levels[0].rooms[0].corners", """[[1,2]]""")]
    [InlineData("$.levels[0].rooms[0].holes", """[["1'","2'"]]""")]
    [InlineData("$.levels[0].rooms[0].holes", """[[[1,2]]]""")]
    [InlineData("$.proposals", "[7]")]
    [InlineData("$.controls", """[{"id":"c","switches":[1],"loads":[]}]""")]
    [InlineData("$.catalogue_snapshot", """{"items.csv":7}""")]
    public void Schema_OfJobFile_RefusesWrongItems(string path, string value)
    {
        var job = JsonNode.Parse(Samples.Read("basement-finish"))!.AsObject();
        JobPaths.Put(job, path, JsonNode.Parse(value));
        Assert.False(JobFile.Read(job.ToJsonString(), "job").Ok);
        Assert.False(Valid(job.ToJsonString()));
    }

    [Fact]
    public void Schema_OfJobFile_SaysWhatEveryListAndMapHolds() => Assert.Empty(Open(JobSchema.Make(), "$"));

    private static IEnumerable<string> Open(JsonNode? at, string path) => at switch
    {
        JsonObject form => form.SelectMany(p => Open(p.Value, $"{path}.{p.Key}"))
            .Concat(form["type"]?.ToJsonString().Contains("array", StringComparison.Ordinal) == true && form["items"] is null ? [path] : [])
            .Concat(form["type"] is JsonValue type && type.ToString() == "object" && form["properties"] is null && form["additionalProperties"] is null ? [path] : []),
        JsonArray list => list.SelectMany((n, i) => Open(n, $"{path}[{i}]")),
        _ => [],
    };

    private static bool Valid(string json)
    {
        using var document = JsonDocument.Parse(json);
        return Schema.Evaluate(document.RootElement).IsValid;
    }

    private static JsonSchema Schema { get; } = JsonSchema.FromText(JobSchema.Make().ToJsonString());

    private static string Text(string job) => Samples.Names.Contains(job) ? Samples.Read(job) : File.ReadAllText(Path.Combine(TestData.Root, "jobs", job));
}
