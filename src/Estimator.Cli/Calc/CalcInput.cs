using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;

namespace Estimator.Cli.Calc;

/// <summary>The input of a calculator, read field by field; what is wrong is said with its path.</summary>
internal sealed class CalcInput(JsonObject json, string path, int year)
{
    private const decimal Most = 1_000_000_000m;

    /// <summary>Year of the edition whose tables are used.</summary>
    internal int Year { get; } = year;

    /// <summary>Writes the facts of the calculation.</summary>
    internal PageWriter Page { get; } = new(0);

    internal bool Has(string field) => json.ContainsKey(field);

    internal decimal Number(string field) => OptionalNumber(field) ?? throw Wrong(field, "nothing", "a number");

    internal decimal? OptionalNumber(string field) => json[field] is { } node ? NumberOf(node, $"{path}.{field}") : null;

    internal string Text(string field) => OptionalText(field) ?? throw Wrong(field, "nothing", "text");

    internal string? OptionalText(string field) => json[field] is { } node
        ? node.GetValueKind() is JsonValueKind.String ? node.GetValue<string>() : throw Wrong(field, Found(node), "text")
        : null;

    internal bool Flag(string field) => json[field] is { } node
        && (node.GetValueKind() is JsonValueKind.True or JsonValueKind.False ? node.GetValue<bool>() : throw Wrong(field, Found(node), "true or false"));

    /// <summary>A number or a list of numbers.</summary>
    internal ImmutableArray<decimal> Numbers(string field) => json[field] switch
    {
        null => [],
        JsonArray list => [.. list.Select((n, i) => NumberOf(n, $"{path}.{field}[{i}]"))],
        { } one => [NumberOf(one, $"{path}.{field}")],
    };

    /// <summary>Text or a list of texts.</summary>
    internal ImmutableArray<string> Texts(string field) => json[field] switch
    {
        null => [],
        JsonArray list => [.. list.Select((n, i) => n?.GetValueKind() is JsonValueKind.String ? n.GetValue<string>() : throw Wrong($"{field}[{i}]", Found(n), "text"))],
        { } one => [one.GetValueKind() is JsonValueKind.String ? one.GetValue<string>() : throw Wrong(field, Found(one), "text or a list of texts")],
    };

    internal bool IsList(string field) => json[field] is JsonArray;

    internal WireSize Size(string field) => SizeOf(Text(field), field);

    internal ImmutableArray<WireSize> Sizes(string field) => [.. Texts(field).Select(t => SizeOf(t, field))];

    /// <summary>Counts by wire size.</summary>
    internal ImmutableArray<(WireSize Size, int Count)> Counts(string field) => json[field] switch
    {
        null => [],
        JsonObject sizes => [.. sizes.Select(p => (SizeOf(p.Key, field), Whole(p.Value, $"{path}.{field}.{p.Key}"))).OrderBy(p => p.Item1)],
        { } other => throw Wrong(field, Found(other), "an object of wire size and count, such as {\"12\": 4}"),
    };

    internal ImmutableArray<CalcInput> Objects(string field) => json[field] switch
    {
        null => [],
        JsonArray list => [.. list.Select((n, i) => n is JsonObject o ? new CalcInput(o, $"{path}.{field}[{i}]", Year) : throw Wrong($"{field}[{i}]", Found(n), "an object"))],
        { } other => throw Wrong(field, Found(other), "a list of objects"),
    };

    internal Fact Given(string field, decimal value, Unit unit) => Page.Given($"{path}.{field}", field.Replace('_', ' '), value, unit);

    internal Fact Given(string field, Unit unit) => Given(field, Number(field), unit);

    internal WrongInputException Wrong(string field, string found, string accepted) => new($"standard input: {path}.{field}: found {found}; accepted: {accepted}.");

    internal int Whole(string field) => Whole(json[field], $"{path}.{field}");

    private WireSize SizeOf(string text, string field)
    {
        var parsed = WireSize.Parse(text);
        return parsed.Ok ? parsed.Value : throw Wrong(field, $"'{text}'", parsed.Problem);
    }

    private static int Whole(JsonNode? node, string at)
    {
        var value = NumberOf(node, at);
        return value == decimal.Truncate(value) && value is >= 0 and <= 100_000 ? (int)value : throw new WrongInputException($"standard input: {at}: found {value}; accepted: a whole number from 0 to 100000.");
    }

    private static decimal NumberOf(JsonNode? node, string at)
    {
        if (node is JsonValue value && value.GetValueKind() is JsonValueKind.Number && value.TryGetValue<decimal>(out var number) && Math.Abs(number) <= Most)
        {
            return number;
        }

        throw new WrongInputException($"standard input: {at}: found {Found(node)}; accepted: a number from -{Most} to {Most}.");
    }

    private static string Found(JsonNode? node)
    {
        var text = node?.ToJsonString() ?? "null";
        return text.Length > 60 ? text[..60] : text;
    }
}
