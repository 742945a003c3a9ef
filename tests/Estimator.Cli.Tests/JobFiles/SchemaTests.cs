using System.Text.Json;
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

    private static bool Valid(string json)
    {
        using var document = JsonDocument.Parse(json);
        return Schema.Evaluate(document.RootElement).IsValid;
    }

    private static JsonSchema Schema { get; } = JsonSchema.FromText(JobSchema.Make().ToJsonString());

    private static string Text(string job) => Samples.Names.Contains(job) ? Samples.Read(job) : File.ReadAllText(Path.Combine(TestData.Root, "jobs", job));
}
