using System.Text.Json;
using System.Text.Json.Serialization;

namespace Estimator.Engine.JobFiles;

/// <summary>Text, as long as allowed.</summary>
internal sealed class TextConverter : JsonConverter<string>
{
    public override string Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => Whole(ref reader, JobLimits.Text);

    /// <summary>The text at which the reader stands, if it is no longer than allowed.</summary>
    internal static string Whole(ref Utf8JsonReader reader, int longest)
    {
        if (reader.TokenType is not JsonTokenType.String)
        {
            throw new JobJsonException(TokenWords.Of(ref reader), "text in quotes");
        }

        var text = ReadWhole(ref reader);
        return text.Length <= longest ? text : throw new JobJsonException($"text of {text.Length} characters", $"text to {longest} characters");
    }

    public override string ReadAsPropertyName(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetString()!;

    public override void Write(Utf8JsonWriter writer, string value, JsonSerializerOptions options) => writer.WriteStringValue(value);

    public override void WriteAsPropertyName(Utf8JsonWriter writer, string value, JsonSerializerOptions options) => writer.WritePropertyName(value);

    private static string ReadWhole(ref Utf8JsonReader reader)
    {
        try
        {
            return reader.GetString()!;
        }
        catch (InvalidOperationException)
        {
            throw new JobJsonException(BrokenText.Found, BrokenText.Accepted);
        }
    }
}
