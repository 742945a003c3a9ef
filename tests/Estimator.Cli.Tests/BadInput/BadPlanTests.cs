using System.Text.Json.Nodes;
using Estimator.TestKit;

namespace Estimator.Cli.Tests.BadInput;

/// <summary>A floor plan that is no house is refused with what was found; nothing is written and nothing crashes.</summary>
public sealed class BadPlanTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("bad-plan").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("levels", "[]", "found no room")]
    [InlineData("levels.0.rooms.1", "null", "found null in a list")]
    [InlineData("levels.0.rooms.0.polygon", "[]", "corners")]
    [InlineData("levels.0.rooms.0.polygon.1", "null", "found null in a list")]
    [InlineData("levels.0.rooms.0.polygon.1", "[1]", "a pair of feet")]
    [InlineData("levels.0.rooms.0.polygon.1", "[1e9, 0]", "a length to")]
    [InlineData("levels.0.openings.0.at", "[null, 0]", "found null in a list")]
    [InlineData("levels.0.rooms.0.id", "\"R02\"", "an id that nothing else has")]
    [InlineData("units", "\"m\"", "accepted: ft")]
    public void Import_BadPlan_SaysWhatWasFound(string place, string value, string said)
    {
        var file = TestData.FloorPlan("us-duplex-unit-a.json");
        var plan = JsonNode.Parse(File.ReadAllText(file))!;
        Put(plan, place.Split('.'), JsonNode.Parse(value));
        var (from, to) = (Path.Combine(_folder, "plan.json"), Path.Combine(_folder, "job.json"));
        File.WriteAllText(from, plan.ToJsonString());
        using var error = new StringWriter();
        Assert.Equal(2, Verbs.Run(["import", from, "--out", to], TextReader.Null, TextWriter.Null, error));
        Assert.Contains(said, error.ToString(), StringComparison.Ordinal);
        Assert.False(File.Exists(to));
    }

    [Fact]
    public void Import_TextWithHalfACharacter_IsRefused()
    {
        var (from, to) = (Path.Combine(_folder, "plan.json"), Path.Combine(_folder, "job.json"));
        File.WriteAllText(from, """{"schema":"neutral-floor-plan/1","title":"\ud800"}""");
        using var error = new StringWriter();
        Assert.Equal(2, Verbs.Run(["import", from, "--out", to], TextReader.Null, TextWriter.Null, error));
        Assert.Contains("plan.json: $.title: found text with a broken character; accepted: text in Unicode", error.ToString(), StringComparison.Ordinal);
        Assert.False(File.Exists(to));
    }

    private static void Put(JsonNode node, string[] place, JsonNode? value)
    {
        foreach (var step in place[..^1])
        {
            node = int.TryParse(step, out var i) ? node[i]! : node[step]!;
        }

        if (int.TryParse(place[^1], out var last))
        {
            node[last] = value;
        }
        else
        {
            node[place[^1]] = value;
        }
    }
}
