using System.Text;
using System.Text.Json;

namespace Estimator.Engine.JobFiles;

/// <summary>Says what the reader stands on.</summary>
internal static class TokenWords
{
    private const int Shown = 60;

    internal static string Of(ref Utf8JsonReader reader) => reader.TokenType switch
    {
        JsonTokenType.String or JsonTokenType.Number => Raw(ref reader),
        JsonTokenType.True => "true",
        JsonTokenType.False => "false",
        JsonTokenType.Null => "null",
        JsonTokenType.StartObject => "an object",
        JsonTokenType.StartArray => "a list",
        JsonTokenType.EndArray => "the end of the list",
        _ => "something else",
    };

    private static string Raw(ref Utf8JsonReader reader)
    {
        var bytes = reader.ValueSpan;
        var text = Encoding.UTF8.GetString(bytes.Length > Shown ? bytes[..Shown] : bytes);
        return reader.TokenType is JsonTokenType.String ? $"'{text}'" : text;
    }
}
