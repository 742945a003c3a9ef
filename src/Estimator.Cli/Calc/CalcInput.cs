using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;

namespace Estimator.Cli.Calc;

/// <summary>The input of a calculator, read field by field; what is wrong is said with its path.</summary>
internal sealed class CalcInput(JsonObject json, ImmutableArray<CalcField> fields, string path, int year)
{
    private static readonly CalcField EachSize = CalcField.Count("size", "Conductors of a size.");

    /// <summary>Year of the edition whose tables are used.</summary>
    internal int Year { get; } = year;

    /// <summary>Writes the facts of the calculation.</summary>
    internal PageWriter Page { get; } = new(0);

    /// <summary>Whether the field was given; null is as good as left out.</summary>
    internal bool Has(string field) => json[field] is not null;

    internal decimal Number(string field) => OptionalNumber(field) ?? throw Wrong(field, "nothing", "a number");

    internal decimal? OptionalNumber(string field) => json[field] is { } node ? NumberOf(node, $"{path}.{field}", Named(field)) : null;

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
        JsonArray list => [.. list.Select((n, i) => NumberOf(n, $"{path}.{field}[{i}]", Named(field)))],
        { } one => [NumberOf(one, $"{path}.{field}", Named(field))],
    };

    /// <summary>Text or a list of texts.</summary>
    internal ImmutableArray<string> Texts(string field) => json[field] switch
    {
        null => [],
        JsonArray list => [.. list.Select((n, i) => n?.GetValueKind() is JsonValueKind.String ? n.GetValue<string>() : throw Wrong($"{field}[{i}]", Found(n), "text"))],
        { } one => [one.GetValueKind() is JsonValueKind.String ? one.GetValue<string>() : throw Wrong(field, Found(one), "text or a list of texts")],
    };

    /// <summary>Refuses a field that the calculator, or an object in it, does not have.</summary>
    internal static void RefuseUnknown(JsonObject json, ImmutableArray<CalcField> fields, string path, string owner)
    {
        if (json.Select(p => p.Key).FirstOrDefault(k => fields.All(f => f.Name != k)) is { } unknown)
        {
            throw new WrongInputException($"standard input: {path}.{unknown}: found a field that {owner} does not have; accepted: {string.Join(", ", fields.Select(f => f.Name))}.");
        }
    }

    internal bool IsList(string field) => json[field] is JsonArray;

    internal WireSize Size(string field) => SizeOf(Text(field), field);

    internal ImmutableArray<WireSize> Sizes(string field) => [.. Texts(field).Select(t => SizeOf(t, field))];

    /// <summary>Counts by wire size.</summary>
    internal ImmutableArray<(WireSize Size, int Count)> Counts(string field) => json[field] switch
    {
        null => [],
        JsonObject sizes => [.. sizes.Select(p => (SizeOf(p.Key, field), (int)NumberOf(p.Value, $"{path}.{field}.{p.Key}", EachSize))).OrderBy(p => p.Item1)],
        { } other => throw Wrong(field, Found(other), "an object of wire size and count, such as {\"12\": 4}"),
    };

    internal ImmutableArray<CalcInput> Objects(string field) => json[field] switch
    {
        null => [],
        JsonArray list => [.. list.Select((n, i) => n is JsonObject o ? Nested(o, field, $"{path}.{field}[{i}]") : throw Wrong($"{field}[{i}]", Found(n), "an object"))],
        { } other => throw Wrong(field, Found(other), "a list of objects"),
    };

    internal Fact Given(string field, decimal value, Unit unit) => Page.Given($"{path}.{field}", field.Replace('_', ' '), value, unit);

    internal Fact Given(string field, Unit unit) => Given(field, Number(field), unit);

    internal WrongInputException Wrong(string field, string found, string accepted) => new($"standard input: {path}.{field}: found {found}; accepted: {accepted}.");

    internal int Whole(string field) => (int)Number(field);

    private WireSize SizeOf(string text, string field)
    {
        var parsed = WireSize.Parse(text);
        return parsed.Ok ? parsed.Value : throw Wrong(field, $"'{text}'", parsed.Problem);
    }

    private CalcField Named(string field) => fields.First(f => f.Name == field);

    private CalcInput Nested(JsonObject item, string field, string at)
    {
        var own = Named(field).Of;
        RefuseUnknown(item, own, at, field);
        return new CalcInput(item, own, at, Year);
    }

    private static decimal NumberOf(JsonNode? node, string at, CalcField field)
    {
        if (node is JsonValue value && value.GetValueKind() is JsonValueKind.Number && value.TryGetValue<decimal>(out var number)
            && number >= field.Least && number <= field.Most && (field.Form != "whole" || number == decimal.Truncate(number)))
        {
            return number;
        }

        var kind = field.Form == "whole" ? "a whole number" : "a number";
        throw new WrongInputException(string.Create(CultureInfo.InvariantCulture, $"standard input: {at}: found {Found(node)}; accepted: {kind} from {field.Least} to {field.Most}."));
    }

    private static string Found(JsonNode? node)
    {
        var text = node?.ToJsonString() ?? "null";
        return text.Length > 60 ? text[..60] : text;
    }
}
