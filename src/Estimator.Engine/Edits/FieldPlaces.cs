using Estimator.Engine.JobFiles;

namespace Estimator.Engine.Edits;

/// <summary>Finds the field that a change sets.</summary>
internal static class FieldPlaces
{
    internal static JobProblem? Find(Place place, string name, out string path, out Type type, out bool optional)
    {
        (path, type, optional) = ($"{place.Path}['{ValueText.Shortened(name)}']", place.Field?.Inside ?? typeof(object), true);
        if (place.Form is null)
        {
            return place.Field!.Shape is FieldShape.Map ? null : new JobProblem(JobTree.File, path, "a field of a list", "an item of the list as target");
        }

        if (place.Form.Field(name) is not { } field)
        {
            return JobTree.Unknown(place, name);
        }

        (path, type, optional) = ($"{place.Path}.{name}", field.Type, field.Optional);
        return field.Shape switch
        {
            _ when place.Key.Contains(name) => new JobProblem(JobTree.File, path, "a new name of an item", "its own: remove the item and add another"),
            FieldShape.Section or FieldShape.Map => new JobProblem(JobTree.File, path, "a section as one value", "its fields, one by one, with the section as target"),
            _ => null,
        };
    }
}
