using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using Estimator.Engine.JobFiles;

namespace Estimator.Cli.Import;

/// <summary>A floor plan in the neutral form, neutral-floor-plan/1: lengths in feet.</summary>
public sealed record NeutralPlan(string Schema, string Id, string Title, string Dwelling, string Units, NeutralSource Source, IReadOnlyList<NeutralLevel> Levels)
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        MaxDepth = 32,
        NumberHandling = JsonNumberHandling.Strict,
    };

    /// <summary>Reads a plan.</summary>
    /// <exception cref="WrongInputException">The text is no plan of this form.</exception>
    public static NeutralPlan Read(string json, string file)
    {
        if (BrokenText.PathIn(json) is { } broken)
        {
            throw new WrongInputException($"{file}: {broken}: found {BrokenText.Found}; accepted: {BrokenText.Accepted}.");
        }

        try
        {
            if (EmptyEntry(JsonNode.Parse(json, documentOptions: new JsonDocumentOptions { MaxDepth = 32 })) is { } path)
            {
                throw new WrongInputException($"{file}: {path}: found null in a list; a value is accepted.");
            }

            var plan = JsonSerializer.Deserialize<NeutralPlan>(json, Options);
            return plan switch
            {
                null => throw new WrongInputException($"{file}: $: found nothing; accepted: a floor plan, neutral-floor-plan/1."),
                { Schema: not "neutral-floor-plan/1" } => throw new WrongInputException($"{file}: $.schema: found '{plan.Schema}'; accepted: neutral-floor-plan/1."),
                { Units: not "ft" } => throw new WrongInputException($"{file}: $.units: found '{plan.Units}'; accepted: ft."),
                { Levels: var levels } when !levels.SelectMany(l => l.Rooms).Any() => throw new WrongInputException($"{file}: $.levels: found no room; a room or more is accepted."),
                _ => plan,
            };
        }
        catch (JsonException e)
        {
            throw new WrongInputException($"{file}: {e.Path ?? "$"}: found {e.Message.Split(" Path:")[0].TrimEnd('.')}; accepted: the form of neutral-floor-plan/1.");
        }
    }

    // The rooms of an opening may be null, since it may lead outside; no other list has empty entries, and the reader would let them pass.
    private static string? EmptyEntry(JsonNode? node) => node switch
    {
        JsonObject thing => thing.Where(p => p.Key != "rooms" || !thing.ContainsKey("width_ft")).Select(p => EmptyEntry(p.Value)).FirstOrDefault(p => p is not null),
        JsonArray list => Enumerable.Range(0, list.Count).Select(i => list[i] is null ? $"{list.GetPath()}[{i}]" : EmptyEntry(list[i])).FirstOrDefault(p => p is not null),
        _ => null,
    };
}
