using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.Json.Nodes;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;

namespace Estimator.Web.Explanations;

/// <summary>Says in trade words where in the job a figure was stated: <c>$.levels[0].rooms[2].size.width</c> is "Bath, size, width".</summary>
public static class StatedPlace
{
    private const int MostSteps = 12;
    private static readonly ConditionalWeakTable<Job, JsonNode> Written = [];

    /// <summary>The words for a path of the job file.</summary>
    /// <param name="job">The job.</param>
    /// <param name="path">The path; one that leads nowhere is told as far as it leads.</param>
    public static string Words(Job job, string path)
    {
        JsonNode? node = Written.GetValue(job, j => JsonSerializer.SerializeToNode(j, JobJson.Options)!);
        List<string> words = [];
        foreach (var step in Steps(path).Take(MostSteps))
        {
            if (node is JsonArray list)
            {
                var index = int.TryParse(step, out var number) ? number : list.TakeWhile(n => Text(n as JsonObject, "id") != step).Count();
                node = index < list.Count ? list[index] : null;
                var plural = words.Count > 0 ? words[^1] : "";
                if (words.Count > 0)
                {
                    words.RemoveAt(words.Count - 1);
                }

                // A room says enough without its level.
                if (plural is "rooms")
                {
                    words.Clear();
                }

                words.Add(Name(node) ?? $"{plural} {index + 1}");
            }
            else
            {
                node = node is JsonObject thing ? thing[step] : null;
                words.Add(step.Replace('_', ' '));
            }
        }

        return words.Count == 0 ? "the job" : string.Join(", ", words);
    }

    /// <summary>The words for the target of an edit: <c>levels/L1/rooms/R2</c> and its field <c>name</c>.</summary>
    public static string TargetWords(Job job, Target target, string field) =>
        Words(job, string.Join('.', target.Steps.Append(field).Where(s => s.Length > 0).Select(s => s.Replace('.', ' '))));

    private static string? Name(JsonNode? node)
    {
        if (node is not JsonObject thing)
        {
            return null;
        }

        return Text(thing, "name") ?? Text(thing, "kind")?.Replace('_', ' ') ?? Text(thing, "id");
    }

    private static string? Text(JsonObject? thing, string field) =>
        thing?[field] is JsonValue value && value.GetValueKind() is JsonValueKind.String && value.GetValue<string>() is { Length: > 0 } text ? text : null;

    private static string[] Steps(string path) => path.Split(['.', '[', ']', '$'], StringSplitOptions.RemoveEmptyEntries);
}
