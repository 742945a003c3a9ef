namespace Estimator.Engine.Contracts;

/// <summary>Something that happened to a change order. It is added and never changed.</summary>
/// <param name="Kind">What happened.</param>
/// <param name="On">The day.</param>
public sealed record ChangeEvent(ChangeEventKind Kind, DateOnly On)
{
    /// <summary>To whom and how it was sent, who signed, a reason.</summary>
    public string Text { get; init; } = "";
}
