using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Estimator.TestKit;

namespace Estimator.Cli.Tests.Published;

/// <summary>
/// Every row of the worked examples and load examples, through the calculators. Each row names its source. A row whose published answer is wrong
/// carries a flag, and the recomputed answer stands. WORKED_EXAMPLES names another file of the same forms to read instead.
/// </summary>
public sealed class WorkedExampleTests
{
    public static TheoryData<string, string> Rows()
    {
        var other = Environment.GetEnvironmentVariable("WORKED_EXAMPLES");
        string[] files = other is { Length: > 0 } ? [other] : [TestData.Reference("worked_examples.csv"), TestData.Reference("load_calc_examples.csv")];
        var data = new TheoryData<string, string>();
        foreach (var file in files)
        {
            foreach (var row in ReferenceCsv.Read(file))
            {
                data.Add(file, row["id"]);
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Calc_OfPublishedExample_GivesItsAnswer(string file, string id)
    {
        var row = ReferenceCsv.Read(file).First(r => r["id"] == id);
        var input = JsonNode.Parse(row["input_json"])!.AsObject();
        var expected = JsonNode.Parse(row["expected_json"])!.AsObject();
        var (translated, names) = ExampleForms.Translate(row["topic"], input, expected);
        var answer = Ask(row["topic"], translated);
        foreach (var (key, value) in expected.Where(e => !ExampleForms.Skipped(e.Key)))
        {
            Assert.True(names.TryGetValue(key, out var find), $"{id}: no answer is known for {key}");
            Same($"{id} {key}", value, find(answer));
        }
    }

    internal static JsonObject Ask(string topic, JsonObject input)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        using var json = new StringReader(input.ToJsonString());
        var code = Verbs.Run(["calc", topic], json, output, error);
        Assert.True(code == 0, $"calc {topic} < {input.ToJsonString()}: {error}");
        return JsonNode.Parse(output.ToString())!.AsObject();
    }

    private static void Same(string what, JsonNode? expected, JsonNode? actual)
    {
        if (expected is JsonArray list)
        {
            Assert.Equal(list.Count, actual!.AsArray().Count);
            for (var i = 0; i < list.Count; i++)
            {
                Same($"{what}[{i}]", list[i], actual[i]);
            }

            return;
        }

        if (expected is JsonObject parts)
        {
            foreach (var (key, value) in parts)
            {
                Same($"{what}.{key}", value, actual![key]);
            }

            return;
        }

        if (expected?.GetValueKind() is JsonValueKind.Number)
        {
            Assert.True(Near(expected.ToJsonString(), actual!.GetValue<decimal>()), $"{what}: expected {expected}, was {actual}");
            return;
        }

        Assert.Equal(expected?.ToJsonString(), actual?.ToJsonString());
    }

    // Equal after rounding to the printed digits, half a last digit and one per mille allowed.
    private static bool Near(string printed, decimal actual)
    {
        var expected = decimal.Parse(printed, NumberStyles.Float, CultureInfo.InvariantCulture);
        var digits = printed.Contains('.', StringComparison.Ordinal) ? printed.Length - printed.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        var half = 0.5m;
        for (var d = 0; d < digits; d++)
        {
            half /= 10m;
        }

        return Math.Abs(actual - expected) <= half + Math.Abs(expected) / 1000m;
    }
}
