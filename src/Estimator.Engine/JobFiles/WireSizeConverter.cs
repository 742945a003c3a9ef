using System.Text.Json;
using System.Text.Json.Serialization;
using Estimator.Engine.Measures;

namespace Estimator.Engine.JobFiles;

/// <summary>A wire size by its trade name.</summary>
internal sealed class WireSizeConverter : JsonConverter<WireSize>
{
    public override WireSize Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var text = TextConverter.Whole(ref reader, JobLimits.Text);
        return WireSize.Parse(text) is { Ok: true } size ? size.Value : throw new JobJsonException($"'{(text.Length > 20 ? text[..20] : text)}'", $"a wire size: {string.Join(", ", WireSize.All)}");
    }

    public override void Write(Utf8JsonWriter writer, WireSize value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());
}
