using System.Collections.Immutable;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;

namespace Estimator.Engine.Edits;

/// <summary>A field of the job file as edits see it, worked out from the types that read the file.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Type">The type that reads it.</param>
/// <param name="Optional">Whether it may be left out.</param>
/// <param name="Shape">How it is edited.</param>
/// <param name="Inside">The type of a section, of an item, of a value of a map.</param>
/// <param name="Key">The fields of an item by which it is found.</param>
internal sealed record FormField(string Name, Type Type, bool Optional, FieldShape Shape, Type Inside, ImmutableArray<string> Key)
{
    internal static FormField Of(JsonPropertyInfo property)
    {
        var (type, info) = (property.PropertyType, JobJson.Options.GetTypeInfo(property.PropertyType));
        var optional = property.IsGetNullable;
        return info.Kind switch
        {
            JsonTypeInfoKind.Object when !optional => new FormField(property.Name, type, optional, FieldShape.Section, type, []),
            JsonTypeInfoKind.Enumerable when KeyOf(info.ElementType!) is { IsEmpty: false } key => new FormField(property.Name, type, optional, FieldShape.Items, info.ElementType!, key),
            JsonTypeInfoKind.Dictionary => new FormField(property.Name, type, optional, FieldShape.Map, info.ElementType!, []),
            _ => new FormField(property.Name, type, optional, FieldShape.Value, type, []),
        };
    }

    /// <summary>The id of an item of this list.</summary>
    internal string IdOf(JsonNode? item) => string.Join('-', Key.Select(k => item![k]!.GetValue<string>()));

    /// <summary>The ids of the items of this list, in order.</summary>
    internal List<string> IdsOf(JsonArray items) => [.. items.Select(IdOf)];

    private static ImmutableArray<string> KeyOf(Type item) => item == typeof(DeviceCount) ? ["kind", "serves"]
        : JobJson.Options.GetTypeInfo(item) is { Kind: JsonTypeInfoKind.Object } info && info.Properties.Any(p => p.Name == "id") ? ["id"] : [];
}
