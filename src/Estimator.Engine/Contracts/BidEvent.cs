namespace Estimator.Engine.Contracts;

/// <summary>Something that happened to a bid. It is added and never changed.</summary>
/// <param name="Kind">What happened.</param>
/// <param name="On">The day.</param>
public sealed record BidEvent(BidEventKind Kind, DateOnly On)
{
    /// <summary>To whom it was sent; empty where that was not said.</summary>
    public string To { get; init; } = "";

    /// <summary>How it was sent, who signed, a reason.</summary>
    public string Text { get; init; } = "";
}
