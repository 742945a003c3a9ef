using System.Text.Json;
using System.Text.Json.Serialization;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.JobFiles;

/// <summary>Points as pairs of lengths.</summary>
internal sealed class GridPointConverter : JsonConverter<GridPoint>
{
    private const string Accepted = "a pair of lengths, such as [\"12' 6\\\"\", \"0'\"]";

    public override GridPoint Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType is not JsonTokenType.StartArray)
        {
            throw new JobJsonException(TokenWords.Of(ref reader), Accepted);
        }

        var lengths = (JsonConverter<Length>)options.GetConverter(typeof(Length));
        reader.Read();
        var x = lengths.Read(ref reader, typeof(Length), options);
        reader.Read();
        var y = lengths.Read(ref reader, typeof(Length), options);
        reader.Read();
        return reader.TokenType is JsonTokenType.EndArray ? new GridPoint(x, y) : throw new JobJsonException(TokenWords.Of(ref reader), Accepted);
    }

    public override void Write(Utf8JsonWriter writer, GridPoint value, JsonSerializerOptions options)
    {
        var lengths = (JsonConverter<Length>)options.GetConverter(typeof(Length));
        writer.WriteStartArray();
        lengths.Write(writer, value.X, options);
        lengths.Write(writer, value.Y, options);
        writer.WriteEndArray();
    }
}
