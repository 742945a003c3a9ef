using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization.Metadata;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.JobFiles;

/// <summary>The JSON Schema of the job file, made from the same types that read it.</summary>
public static class JobSchema
{
    /// <summary>The schema, 2020-12.</summary>
    public static JsonObject Make()
    {
        var schema = (JsonObject)JobJson.Options.GetJsonSchemaAsNode(typeof(Job), new JsonSchemaExporterOptions
        {
            TreatNullObliviousAsNonNullable = true,
            TransformSchemaNode = Transform,
        });
        schema.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.Insert(1, "$id", "urn:estimator-job:1");
        schema.Insert(2, "title", "Job file of the residential wiring estimator, version 1");
        return schema;
    }

    private static JsonNode Transform(JsonSchemaExporterContext context, JsonNode schema)
    {
        var type = context.TypeInfo.Type;
        if (Own(Nullable.GetUnderlyingType(type) ?? type) is { } own)
        {
            var nullable = Nullable.GetUnderlyingType(type) is not null || context.PropertyInfo is { IsGetNullable: true };
            return nullable ? new JsonObject { ["anyOf"] = new JsonArray(own, new JsonObject { ["type"] = "null" }) } : own;
        }

        // The exporter leaves out what a converter of ours reads.
        if (context.TypeInfo.ElementType is { } element && Own(element) is { } inside && schema is JsonObject form)
        {
            form[context.TypeInfo.Kind is JsonTypeInfoKind.Dictionary ? "additionalProperties" : "items"] = inside;
        }

        return schema;
    }

    private static JsonObject? Own(Type type) => type switch
    {
        _ when type == typeof(Length) => new JsonObject { ["type"] = "string", ["description"] = "A length with its unit: 12' 6\", 12' 6 1/2\", 12.5 ft, 150 in, 3.8 m.", ["pattern"] = "^\\s*-?[0-9][0-9.'′\"″/ a-zA-Z-]*$" },
        _ when type == typeof(WireSize) => new JsonObject { ["type"] = "string", ["enum"] = new JsonArray([.. WireSize.All.Select(w => (JsonNode)w.ToString())]) },
        _ when type == typeof(GridPoint) => new JsonObject { ["type"] = "array", ["items"] = Own(typeof(Length)), ["minItems"] = 2, ["maxItems"] = 2, ["description"] = "A point: x and y, each a length with its unit." },
        _ when type == typeof(Money) || type == typeof(Area) || type == typeof(Power) || type == typeof(Current) || type == typeof(Percent) => new JsonObject { ["type"] = "number", ["minimum"] = 0, ["maximum"] = JobLimits.Number },
        _ when type == typeof(string) => new JsonObject { ["type"] = "string", ["maxLength"] = JobLimits.Text },
        _ when type == typeof(CsvText) => new JsonObject { ["type"] = "string", ["maxLength"] = JobLimits.CsvText },
        _ when type.IsEnum => new JsonObject { ["enum"] = new JsonArray([.. WordConverterFactory.WordsOf(type).Select(w => (JsonNode)w)]) },
        _ => null,
    };
}
