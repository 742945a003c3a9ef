using System.Text.Json.Nodes;

namespace Estimator.Engine.Edits;

/// <summary>Where a target was found in the tree of a job.</summary>
/// <param name="Node">What stands there.</param>
/// <param name="Path">Its path in the job file.</param>
/// <param name="Form">Its fields, where it is an object.</param>
/// <param name="Field">The field that it is, where it is a list of items or a map.</param>
/// <param name="Key">The fields that its id is made of, where it is an item.</param>
internal sealed record Place(JsonNode Node, string Path, JobForm? Form, FormField? Field, IReadOnlyCollection<string> Key)
{
    internal static Place OfJob(JsonObject job) => new(job, "$", JobForm.Job, null, []);

    internal static Place OfItem(JsonNode node, string path, FormField list) => new(node, path, JobForm.Of(list.Inside), null, list.Key);

    internal static Place OfField(JsonNode node, string path, FormField field) => field.Shape is FieldShape.Section
        ? new Place(node, path, JobForm.Of(field.Inside), null, [])
        : new Place(node, path, null, field, []);
}
