using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace Estimator.Engine.Edits;

/// <summary>JSON text that stands as a value in the JSON around it, not as text in quotes.</summary>
internal sealed class JsonTextConverter : JsonConverter<string>
{
    public override string Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => ValueText.Of(JsonNode.Parse(ref reader))!;

    public override void Write(Utf8JsonWriter writer, string value, JsonSerializerOptions options) => writer.WriteRawValue(value);
}
