using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase.Orders;

/// <summary>What is ordered from a supplier, and all that happened since.</summary>
/// <param name="Lines">The lines.</param>
/// <param name="Events">What happened, in the order in which it was noted.</param>
/// <param name="Delivery">What the delivery costs.</param>
public sealed record PurchaseOrder(ImmutableArray<OrderLine> Lines, ImmutableArray<OrderEvent> Events, Money Delivery)
{
    /// <summary>What became of each line.</summary>
    public ImmutableArray<LineStanding> Standing => [.. Lines.Select(l => StandingOf(l))];

    /// <summary>How far the order is.</summary>
    public OrderState State
    {
        get
        {
            var lines = Standing;
            return lines.All(l => l.Cancelled == l.Line.Packs) ? OrderState.Cancelled
                : lines.All(l => l.Open == 0) ? OrderState.Received
                : lines.Any(l => l.Received > 0) ? OrderState.PartlyReceived
                : Events.Any(e => e.Kind == OrderEventKind.Placed) ? OrderState.Placed : OrderState.Draft;
        }
    }

    /// <summary>Goods that were not cancelled, each line rounded to cents.</summary>
    public Money Goods => Sum(Standing.Select(l => l.Line.CostOf(l.Line.Packs - l.Cancelled)));

    /// <summary>By how much substitutes cost more than what they stand for.</summary>
    public Money Substitutes => Sum(Of(OrderEventKind.Substituted).Select(e => e.Amount));

    /// <summary>Credits of the supplier.</summary>
    public Money Credits => Sum(Of(OrderEventKind.Credited).Select(e => e.Amount));

    /// <summary>Charges for taking packs back.</summary>
    public Money Restocking => Sum(Of(OrderEventKind.RestockingCharged).Select(e => e.Amount));

    /// <summary>What the order comes to: goods and delivery, substitutes and restocking charges, less credits. A returned pack counts until it is credited.</summary>
    public Money Total => Goods + (State is OrderState.Cancelled ? Money.Zero : Delivery) + Substitutes + Restocking - Credits;

    /// <summary>The day on which the rest was promised last; null where no day was said.</summary>
    public DateOnly? Promised => Events.LastOrDefault(e => e.Until is not null)?.Until;

    /// <summary>What speaks against noting an event, as a sentence; null where nothing does.</summary>
    /// <param name="happened">The event.</param>
    public string? Refusal(OrderEvent happened)
    {
        ArgumentNullException.ThrowIfNull(happened);
        var placed = Events.Any(e => e.Kind == OrderEventKind.Placed);
        if (happened.Kind is OrderEventKind.Placed)
        {
            return placed ? "The order was placed already." : State is OrderState.Cancelled ? "The order was cancelled." : null;
        }

        if (!placed && happened.Kind is not OrderEventKind.Cancelled)
        {
            return "The order is a draft: place it first.";
        }

        return happened.Kind switch
        {
            OrderEventKind.Confirmed => happened.Until is null ? "No day was said; the day on which the order comes is accepted." : null,
            OrderEventKind.Credited or OrderEventKind.RestockingCharged => happened.Amount > Money.Zero ? null : $"Found {happened.Amount}; an amount above $0.00 is accepted.",
            _ => OfLine(happened),
        };
    }

    private string? OfLine(OrderEvent happened)
    {
        if (Standing.FirstOrDefault(l => l.Line.Line == happened.Line) is not { } line)
        {
            return $"There is no line {happened.Line} in this order.";
        }

        var most = happened.Kind is OrderEventKind.Returned ? line.Received - line.Returned : line.Open;
        var what = happened.Kind is OrderEventKind.Returned ? "have come and not gone back" : "are still to come";
        return happened.Packs >= 1 && happened.Packs <= most
            ? happened.Kind is OrderEventKind.Substituted && happened.Text.Trim().Length == 0 ? "What came instead was not said." : null
            : $"Found {happened.Packs} packs of {line.Line.Description}; {most} {what}.";
    }

    private LineStanding StandingOf(OrderLine line)
    {
        int Packs(params ReadOnlySpan<OrderEventKind> kinds)
        {
            var sum = 0;
            foreach (var e in Events)
            {
                sum += e.Line == line.Line && kinds.Contains(e.Kind) ? e.Packs : 0;
            }

            return sum;
        }

        var (received, cancelled) = (Packs(OrderEventKind.Received, OrderEventKind.Substituted), Packs(OrderEventKind.Cancelled));
        return new LineStanding(line, received, cancelled, Waiting(line), Packs(OrderEventKind.Returned));
    }

    // Said last counts; what came or was cancelled afterwards waits no more, late packs first.
    private int Waiting(OrderLine line)
    {
        var (waiting, open) = (0, line.Packs);
        foreach (var e in Events.Where(e => e.Line == line.Line))
        {
            switch (e.Kind)
            {
                case OrderEventKind.BackOrdered:
                    waiting = e.Packs;
                    break;
                case OrderEventKind.Received or OrderEventKind.Substituted or OrderEventKind.Cancelled:
                    open -= e.Packs;
                    waiting = Math.Min(waiting, open);
                    break;
                default:
                    break;
            }
        }

        return waiting;
    }

    private IEnumerable<OrderEvent> Of(OrderEventKind kind) => Events.Where(e => e.Kind == kind);

    private static Money Sum(IEnumerable<Money> amounts) => amounts.Aggregate(Money.Zero, (sum, a) => sum + a);
}
