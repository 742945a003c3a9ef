using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Estimator.Engine.Measures;

namespace Estimator.Engine.JobFiles;

/// <summary>Lengths as text with their unit; written so that nothing is lost.</summary>
internal sealed class LengthConverter : JsonConverter<Length>
{
    internal const string Accepted = "text with a unit, such as \"12' 6\\\"\", \"12' 6 1/2\\\"\", \"12.5 ft\", \"150 in\" or \"3.8 m\"";

    public override Length Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType is not JsonTokenType.String)
        {
            throw new JobJsonException(TokenWords.Of(ref reader), Accepted);
        }

        var parsed = Length.Parse(reader.GetString()!);
        if (!parsed.Ok)
        {
            throw new JobJsonException(TokenWords.Of(ref reader), Accepted);
        }

        return parsed.Value.Abs() <= Length.FromFeet(JobLimits.Feet)
            ? parsed.Value
            : throw new JobJsonException(TokenWords.Of(ref reader), $"a length to {JobLimits.Feet} ft");
    }

    public override void Write(Utf8JsonWriter writer, Length value, JsonSerializerOptions options) => writer.WriteStringValue(Text(value));

    private static string Text(Length value)
    {
        var tape = value.ToString();
        if (Length.Parse(tape) is { Ok: true } again && again.Value == value)
        {
            return tape;
        }

        var feet = string.Create(CultureInfo.InvariantCulture, $"{decimal.Round(value.ToFeet(), 4, MidpointRounding.AwayFromZero):0.####} ft");
        return Length.Parse(feet) is { Ok: true } exact && exact.Value == value
            ? feet
            : string.Create(CultureInfo.InvariantCulture, $"{value.ToNanometres() / 1_000_000m:0.######} mm");
    }
}
