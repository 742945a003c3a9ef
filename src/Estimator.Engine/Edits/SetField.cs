using System.Text.Json.Serialization;

namespace Estimator.Engine.Edits;

/// <summary>Gives a field another value, or none.</summary>
/// <param name="Target">The thing that has the field: the job, a section such as <c>practice</c>, an item of a list, or a map such as <c>catalogue_snapshot</c>.</param>
/// <param name="Field">The field's name in the job file; the key in a map.</param>
/// <param name="Before">The value that it had; null for none.</param>
/// <param name="After">The value that it gets; null for none.</param>
/// <remarks>A list whose items have no ids, a point, a size and a spot on a wall are one value. So is a list in which an id stands twice.</remarks>
public sealed record SetField(
    Target Target,
    string Field,
    [property: JsonConverter(typeof(JsonTextConverter))] string? Before,
    [property: JsonConverter(typeof(JsonTextConverter))] string? After) : JobChange
{
    /// <inheritdoc/>
    public override Target Target { get; init; } = Target;

    internal override Target Touched => Target.Then(Field);

    /// <inheritdoc/>
    public override JobChange Inverse() => this with { Before = After, After = Before };
}
