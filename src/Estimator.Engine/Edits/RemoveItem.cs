using System.Text.Json.Serialization;

namespace Estimator.Engine.Edits;

/// <summary>Takes an item out of a list whose items have ids.</summary>
/// <param name="Target">The list, such as <c>levels/L1/rooms</c>.</param>
/// <param name="Id">The item's id.</param>
/// <param name="Follows">The item before it; null where it was the first.</param>
/// <param name="Precedes">The item after it; null where it was the last.</param>
/// <param name="Content">The whole item as it was, so that it can be put back.</param>
public sealed record RemoveItem(
    Target Target,
    string Id,
    string? Follows,
    string? Precedes,
    [property: JsonConverter(typeof(JsonTextConverter))] string Content) : JobChange
{
    /// <inheritdoc/>
    public override Target Target { get; init; } = Target;

    internal override Target Touched => Target.Then(Id);

    /// <inheritdoc/>
    public override JobChange Inverse() => new AddItem(Target, Id, Follows, Precedes, Content);
}
