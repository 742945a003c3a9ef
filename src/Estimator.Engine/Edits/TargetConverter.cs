using System.Text.Json;
using System.Text.Json.Serialization;
using Estimator.Engine.JobFiles;

namespace Estimator.Engine.Edits;

/// <summary>Targets as text.</summary>
internal sealed class TargetConverter : JsonConverter<Target>
{
    private const string Accepted = "steps divided by '/', with ~0 for a tilde and ~1 for a stroke in an id, such as \"levels/L1/rooms/R2\"";

    public override Target Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType is JsonTokenType.String && Target.Parse(reader.GetString()!) is { Ok: true } target ? target.Value : throw new JobJsonException(TokenWords.Of(ref reader), Accepted);

    public override void Write(Utf8JsonWriter writer, Target value, JsonSerializerOptions options) => writer.WriteStringValue(value.Text);
}
