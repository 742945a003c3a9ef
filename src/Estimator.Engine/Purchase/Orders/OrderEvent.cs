using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase.Orders;

/// <summary>Something that happened to a purchase order. It is added to the order and never changed.</summary>
/// <param name="Kind">What happened.</param>
/// <param name="On">The day.</param>
public sealed record OrderEvent(OrderEventKind Kind, DateOnly On)
{
    /// <summary>The line; 0 where it is about the whole order.</summary>
    public int Line { get; init; }

    /// <summary>How many packs of the line.</summary>
    public int Packs { get; init; }

    /// <summary>A credit, a charge, or by how much a substitute costs more than what it stands for.</summary>
    public Money Amount { get; init; }

    /// <summary>The day on which the rest is promised.</summary>
    public DateOnly? Until { get; init; }

    /// <summary>What came instead, a reason, a slip number.</summary>
    public string Text { get; init; } = "";
}
