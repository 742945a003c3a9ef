using System.Text.Json.Serialization;

namespace Estimator.Engine.Edits;

/// <summary>Adds an item to a list whose items have ids.</summary>
/// <param name="Target">The list, such as <c>levels/L1/rooms</c>.</param>
/// <param name="Id">The item's id.</param>
/// <param name="Follows">The item before it; null where it is the first.</param>
/// <param name="Precedes">The item after it; null where it is the last.</param>
/// <param name="Content">The whole item.</param>
/// <remarks>
/// Both neighbours are named, so that the place is found again when one of them is gone. What others have put between them meanwhile is ordered with it by id:
/// then two people's items come to stand alike whoever was first.
/// </remarks>
public sealed record AddItem(
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
    public override JobChange Inverse() => new RemoveItem(Target, Id, Follows, Precedes, Content);
}
