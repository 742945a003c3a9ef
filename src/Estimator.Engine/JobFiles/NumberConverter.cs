using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Estimator.Engine.JobFiles;

/// <summary>A measure as a plain number in its unit.</summary>
internal sealed class NumberConverter<T>(Func<decimal, T> from, Func<T, decimal> to, string unit) : JsonConverter<T>
    where T : struct
{
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType is JsonTokenType.Number && reader.TryGetDecimal(out var value) && value is >= 0 and <= JobLimits.Number
            ? from(value)
            : throw new JobJsonException(TokenWords.Of(ref reader), string.Create(CultureInfo.InvariantCulture, $"a number of {unit} from 0 to {JobLimits.Number}"));

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteNumberValue(to(value));
}
