using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;
using Estimator.Engine.Rules;

namespace Estimator.Engine.JobFiles;

/// <summary>Choices as words; a word that is not known is refused with the list of those that are.</summary>
internal sealed class WordConverterFactory : JsonConverterFactory
{
    public override bool CanConvert(Type typeToConvert) => typeToConvert.IsEnum;

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        (JsonConverter)Activator.CreateInstance(typeof(WordConverter<>).MakeGenericType(typeToConvert))!;

    internal static IEnumerable<string> WordsOf(Type type) => type.GetFields(BindingFlags.Public | BindingFlags.Static).Select(Words.Of);

    private sealed class WordConverter<T> : JsonConverter<T>
        where T : struct, Enum
    {
        private readonly Dictionary<string, T> _byWord = typeof(T).GetFields(BindingFlags.Public | BindingFlags.Static)
            .ToDictionary(Words.Of, f => (T)f.GetValue(null)!, StringComparer.Ordinal);

        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType is JsonTokenType.String && reader.GetString() is { } word && _byWord.TryGetValue(word, out var value)
                ? value
                : throw new JobJsonException(TokenWords.Of(ref reader), $"one of {string.Join(", ", _byWord.Keys)}");

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) =>
            writer.WriteStringValue(_byWord.First(p => EqualityComparer<T>.Default.Equals(p.Value, value)).Key);
    }
}
