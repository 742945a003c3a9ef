using Estimator.Engine.Measures;

namespace Estimator.Engine.Payments;

/// <summary>Something that happened to an invoice. It is added and never changed.</summary>
/// <param name="Kind">What happened.</param>
/// <param name="On">The day.</param>
public sealed record InvoiceEvent(InvoiceEventKind Kind, DateOnly On)
{
    /// <summary>What was paid.</summary>
    public Money Amount { get; init; }

    /// <summary>To whom and how it was sent, the number of a check, a reason.</summary>
    public string Text { get; init; } = "";
}
