using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Estimator.Engine.JobFiles;

namespace Estimator.Cli.Calc;

/// <summary>One calculator: JSON in, JSON out; a list in gives a list out.</summary>
internal static class CalcVerb
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    internal static Command Create(Shell shell)
    {
        var topic = new Argument<string?>("topic") { Arity = ArgumentArity.ZeroOrOne, Description = "Which calculator; left out, they are listed." };
        var edition = new Option<string>("--edition") { Description = "Edition where the input names none.", DefaultValueFactory = _ => "NEC-2023" };
        var schema = new Option<bool>("--schema") { Description = "Print the JSON Schema of the input." };
        var command = new Command("calc", "One calculator: JSON in, JSON out.") { topic, edition, schema };
        command.SetAction(parsed =>
        {
            var year = (int)Editions.Parse(parsed.GetValue(edition)!);
            if (parsed.GetValue(topic) is not { } name)
            {
                List(shell.Output);
                return ExitCode.Done;
            }

            var found = CalcTopics.All.FirstOrDefault(t => t.Name == name)
                ?? throw new WrongInputException($"calc: found topic '{name}'; one of {string.Join(", ", CalcTopics.All.Select(t => t.Name))} is accepted.");
            shell.Output.WriteLine((parsed.GetValue(schema) ? found.Schema() : Answer(found, shell.Input.ReadToEnd(), year)).ToJsonString(Indented));
            return ExitCode.Done;
        });
        return command;
    }

    private static JsonNode Answer(CalcTopic topic, string text, int year)
    {
        if (BrokenText.PathIn(text) is { } broken)
        {
            throw new WrongInputException($"standard input: {broken}: found {BrokenText.Found}; accepted: {BrokenText.Accepted}.");
        }

        JsonNode? input;
        try
        {
            input = JsonNode.Parse(text, documentOptions: new JsonDocumentOptions { MaxDepth = 16, AllowDuplicateProperties = false });
        }
        catch (JsonException e)
        {
            throw new WrongInputException($"standard input: found text that is no JSON (line {(e.LineNumber ?? 0) + 1}); accepted: an object, or a list of objects, such as {topic.Example}.");
        }

        return input switch
        {
            JsonObject one => Run(topic, one, "$", year),
            JsonArray list => new JsonArray([.. list.Select((n, i) => n is JsonObject o
                ? (JsonNode)Run(topic, o, $"$[{i}]", year)
                : throw new WrongInputException($"standard input: $[{i}]: found no object; accepted: an object such as {topic.Example}."))]),
            _ => throw new WrongInputException($"standard input: $: found no object; accepted: an object, or a list of objects, such as {topic.Example}."),
        };
    }

    private static JsonObject Run(CalcTopic topic, JsonObject input, string path, int year)
    {
        CalcInput.RefuseUnknown(input, topic.Fields, path, topic.Name);
        try
        {
            return topic.Run(new CalcInput(input, topic.Fields, path, EditionOf(input, path) ?? year));
        }
        catch (Exception e) when (e is OverflowException or DivideByZeroException)
        {
            throw new WrongInputException($"standard input: {path}: found numbers that give no answer ({e.Message.TrimEnd('.')}); accepted: amounts that a house could have, and no zero to divide by.");
        }
    }

    // Editions before 2017 are answered by the tables of 2017.
    private static int? EditionOf(JsonObject input, string path)
    {
        if (input["edition"] is not { } node)
        {
            return null;
        }

        var text = node.GetValueKind() is JsonValueKind.String ? node.GetValue<string>() : node.ToJsonString();
        var digits = text.StartsWith("NEC-", StringComparison.OrdinalIgnoreCase) ? text[4..] : text;
        return int.TryParse(digits, out var year) && year is >= 1900 and <= 2026
            ? year < 2017 ? 2017 : year < 2020 ? 2017 : year < 2023 ? 2020 : year < 2026 ? 2023 : 2026
            : throw new WrongInputException($"standard input: {path}.edition: found '{text}'; accepted: a year such as 2023, or NEC-2023.");
    }

    private static void List(TextWriter output)
    {
        foreach (var topic in CalcTopics.All)
        {
            output.WriteLine($"{topic.Name,-16} {topic.Words}");
            output.WriteLine($"{"",-16} {topic.Example}");
        }
    }
}
