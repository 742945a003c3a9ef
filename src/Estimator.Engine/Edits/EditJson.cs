using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Edits;

/// <summary>Reads and writes an edit as JSON on one line, as it is kept in the log of a job.</summary>
public static class EditJson
{
    private const string Form = "an edit with id, title and changes, each with change (set_field, add_item or remove_item), target and all its other fields";

    private static readonly JsonSerializerOptions Options = Make();

    /// <summary>Writes an edit; reading it again gives the same edit.</summary>
    public static string Write(JobEdit edit) => JsonSerializer.Serialize(edit, Options);

    /// <summary>Reads an edit, or says what was found, where, and what is accepted.</summary>
    public static Parsed<JobEdit> Read(string json)
    {
        try
        {
            var edit = JsonSerializer.Deserialize<JobEdit>(json, Options);
            var missing = edit?.Changes.IndexOf(null!) ?? -1;
            return edit is null || missing >= 0
                ? Refused(new JobProblem(JobTree.File, edit is null ? "$" : string.Create(CultureInfo.InvariantCulture, $"$.changes[{missing}]"), "nothing", Form))
                : Parsed<JobEdit>.Success(edit);
        }
        catch (JsonException e)
        {
            var problem = JobProblem.Of(e, JobTree.File);
            return Refused(e is JobJsonException ? problem : problem with { Accepted = Form });
        }
        catch (NotSupportedException e)
        {
            // The reader's word for a change that does not say which it is; the path stands in its message.
            var path = e.Message.IndexOf("Path: ", StringComparison.Ordinal) is >= 0 and var at ? e.Message[(at + "Path: ".Length)..].Split(' ')[0] : "$";
            return Refused(new JobProblem(JobTree.File, path, "a change without its kind", Form));
        }
    }

    /// <summary>Writes one change.</summary>
    public static string WriteChange(JobChange change) => JsonSerializer.Serialize(change, Options);

    /// <summary>Reads one change, or says what was found, where, and what is accepted.</summary>
    public static Parsed<JobChange> ReadChange(string json)
    {
        try
        {
            return JsonSerializer.Deserialize<JobChange>(json, Options) is { } change ? Parsed<JobChange>.Success(change) : Unreadable(json);
        }
        catch (Exception e) when (e is JsonException or NotSupportedException)
        {
            return Unreadable(json);
        }
    }

    private static Parsed<JobChange> Unreadable(string json) =>
        Parsed<JobChange>.Failure($"found {ValueText.Shortened(json)}; accepted: a change with its kind (set_field, add_item or remove_item), target and all its other fields.");

    private static Parsed<JobEdit> Refused(JobProblem problem) => Parsed<JobEdit>.Failure(problem.ToString());

    private static JsonSerializerOptions Make()
    {
        var options = new JsonSerializerOptions(JobJson.Options)
        {
            WriteIndented = false,
            // Every field is written and asked for, so that one left out by mistake is not read as no value.
            DefaultIgnoreCondition = JsonIgnoreCondition.Never,
            AllowOutOfOrderMetadataProperties = true,
        };
        options.Converters.Add(new TargetConverter());
        options.MakeReadOnly();
        return options;
    }
}
