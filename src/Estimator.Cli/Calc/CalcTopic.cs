using System.Collections.Immutable;
using System.Text.Json.Nodes;

namespace Estimator.Cli.Calc;

/// <summary>A calculator.</summary>
/// <param name="Name">Its name on the command line.</param>
/// <param name="Words">What it answers.</param>
/// <param name="Example">An input that shows the fields.</param>
/// <param name="Fields">Its fields.</param>
/// <param name="Run">What it computes.</param>
internal sealed record CalcTopic(string Name, string Words, string Example, ImmutableArray<CalcField> Fields, Func<CalcInput, JsonObject> Run)
{
    /// <summary>The JSON Schema of the input.</summary>
    internal JsonObject Schema() => new()
    {
        ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
        ["$id"] = $"urn:estimator-calc:{Name}:1",
        ["title"] = Words,
        ["type"] = "object",
        ["additionalProperties"] = false,
        ["properties"] = Properties(Fields),
    };

    private static JsonObject Properties(ImmutableArray<CalcField> fields) =>
        new(fields.Select(f => KeyValuePair.Create<string, JsonNode?>(f.Name, Property(f))));

    private static JsonObject Property(CalcField field)
    {
        JsonObject form = field.Form switch
        {
            "number" or "whole" => Number(field),
            "flag" => new JsonObject { ["type"] = "boolean" },
            "numbers" => new JsonObject { ["type"] = new JsonArray("number", "array"), ["items"] = Number(field) },
            "texts" => new JsonObject { ["type"] = new JsonArray("string", "array"), ["items"] = new JsonObject { ["type"] = "string" } },
            "sizes" => new JsonObject { ["type"] = "object", ["additionalProperties"] = new JsonObject { ["type"] = "integer", ["minimum"] = 0, ["maximum"] = CalcField.LargestCount } },
            "objects" => new JsonObject { ["type"] = "array", ["items"] = new JsonObject { ["type"] = "object", ["additionalProperties"] = false, ["properties"] = Properties(field.Of) } },
            _ => new JsonObject { ["type"] = "string" },
        };
        form["description"] = field.Words;
        return form;
    }

    private static JsonObject Number(CalcField field) =>
        new() { ["type"] = field.Form == "whole" ? "integer" : "number", ["minimum"] = field.Least, ["maximum"] = field.Most };
}
