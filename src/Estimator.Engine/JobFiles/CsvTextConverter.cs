using System.Text.Json;
using System.Text.Json.Serialization;
using Estimator.Engine.House;

namespace Estimator.Engine.JobFiles;

/// <summary>A CSV file as text, as long as allowed.</summary>
internal sealed class CsvTextConverter : JsonConverter<CsvText>
{
    public override CsvText Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => new(TextConverter.Whole(ref reader, JobLimits.CsvText));

    public override void Write(Utf8JsonWriter writer, CsvText value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());
}
