using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Estimator.Engine.JobFiles;

/// <summary>Finds text with half a character: an escape that stands for one half of a pair, without the other. No reader can make text of it.</summary>
public static class BrokenText
{
    /// <summary>What is said to have been found.</summary>
    public const string Found = "text with a broken character";

    /// <summary>What is said to be accepted.</summary>
    public const string Accepted = "text in Unicode";

    /// <summary>The path of the first such text, or of the object that has such a name; null where there is none, or where the text is no JSON.</summary>
    /// <param name="json">The text of a file.</param>
    public static string? PathIn(string json)
    {
        if (!json.Contains("\\ud", StringComparison.OrdinalIgnoreCase))
        {
            return null;
        }

        var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(json));
        var open = new Stack<Step>();
        try
        {
            while (reader.Read())
            {
                if (reader.TokenType is JsonTokenType.EndArray or JsonTokenType.EndObject)
                {
                    open.Pop();
                    continue;
                }

                if (reader.TokenType is not JsonTokenType.PropertyName && open.TryPeek(out var list) && list.Index is { } index)
                {
                    open.Pop();
                    open.Push(list with { Index = index + 1 });
                }

                if (reader.TokenType is JsonTokenType.PropertyName or JsonTokenType.String && Whole(ref reader) is null)
                {
                    return PathOf(reader.TokenType is JsonTokenType.PropertyName ? open.Skip(1) : open);
                }

                Enter(ref reader, open);
            }
        }
        catch (JsonException)
        {
            return null;
        }

        return null;
    }

    private static void Enter(ref Utf8JsonReader reader, Stack<Step> open)
    {
        switch (reader.TokenType)
        {
            case JsonTokenType.StartArray:
                open.Push(new Step(null, -1));
                break;
            case JsonTokenType.StartObject:
                open.Push(new Step(null, null));
                break;
            case JsonTokenType.PropertyName:
                open.Pop();
                open.Push(new Step(reader.GetString(), null));
                break;
            default:
                break;
        }
    }

    private static string? Whole(ref Utf8JsonReader reader)
    {
        try
        {
            return reader.GetString();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    private static string PathOf(IEnumerable<Step> open) => open.Reverse().Aggregate("$", (path, step) => step switch
    {
        { Index: { } index } => string.Create(CultureInfo.InvariantCulture, $"{path}[{index}]"),
        { Name: { } name } => $"{path}.{name}",
        _ => path,
    });

    // Where the reader stands in one object or list that is open: at a field, or at an entry.
    private readonly record struct Step(string? Name, int? Index);
}
