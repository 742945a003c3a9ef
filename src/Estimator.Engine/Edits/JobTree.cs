using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;

namespace Estimator.Engine.Edits;

/// <summary>A job as the tree of its file, to be changed in place and read back.</summary>
internal sealed class JobTree
{
    /// <summary>What stands for the file's name in problems.</summary>
    internal const string File = "this edit";

    private const int Named = 12;

    private readonly JsonObject _job;

    private JobTree(JsonObject job) => _job = job;

    internal static JobTree Of(Job job) => new(Node(job));

    internal static JsonObject Node(Job job) => (JsonObject)JsonSerializer.SerializeToNode(job, JobJson.Options)!;

    /// <summary>Finds a target.</summary>
    internal JobProblem? Find(Target target, out Place place)
    {
        place = Place.OfJob(_job);
        foreach (var step in target.Steps)
        {
            if (Step(place, step, out place) is { } problem)
            {
                return problem;
            }
        }

        return null;
    }

    /// <summary>Reads the tree back; the job is not yet checked.</summary>
    internal JobProblem? Read(out Job? job)
    {
        if (EmptyEntries.Of(_job, File) is [var empty, ..])
        {
            job = null;
            return empty;
        }

        try
        {
            job = _job.Deserialize<Job>(JobJson.Options);
            return job!.Schema == Job.CurrentSchema ? null : new JobProblem(File, "$.schema", $"'{ValueText.Shortened(job.Schema)}'", Job.CurrentSchema);
        }
        catch (JsonException e)
        {
            job = null;
            return JobProblem.Of(e, File);
        }
    }

    /// <summary>A few ids of a list, for a message.</summary>
    internal static string Some(IReadOnlyCollection<string> ids) => ids.Count == 0
        ? "none, for the list is empty"
        : $"{string.Join(", ", ids.Take(Named).Select(ValueText.Shortened))}{(ids.Count > Named ? ", ..." : "")}";

    private static JobProblem? Step(Place at, string step, out Place next)
    {
        next = at;
        if (at.Field is { Shape: FieldShape.Items } list)
        {
            var ids = list.IdsOf((JsonArray)at.Node);
            var index = ids.IndexOf(step);
            if (index < 0)
            {
                return new JobProblem(File, at.Path, $"'{ValueText.Shortened(step)}'", $"the id of an item of this list: {Some(ids)}");
            }

            next = Place.OfItem(((JsonArray)at.Node)[index]!, string.Create(CultureInfo.InvariantCulture, $"{at.Path}[{index}]"), list);
            return null;
        }

        if (at.Form is null)
        {
            return new JobProblem(File, at.Path, $"'{ValueText.Shortened(step)}' inside a value", "the map as target and the key as field");
        }

        var path = $"{at.Path}.{step}";
        switch (at.Form.Field(step))
        {
            case null:
                return Unknown(at, step);
            case { Shape: FieldShape.Value }:
                return new JobProblem(File, path, "a target inside a value", "the thing that has the field as target, and the field set as a whole");
            case var field:
                next = Place.OfField(((JsonObject)at.Node)[step]!, path, field);
                return null;
        }
    }

    /// <summary>Says that a thing has no such field.</summary>
    internal static JobProblem Unknown(Place at, string field) =>
        new(File, at.Path, $"the field '{ValueText.Shortened(field)}'", $"one of {string.Join(", ", at.Form!.Fields.Select(f => f.Name))}");
}
