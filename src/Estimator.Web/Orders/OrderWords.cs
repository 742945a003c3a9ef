using Estimator.Engine.Purchase.Orders;
using Estimator.Web.Figures;

namespace Estimator.Web.Orders;

/// <summary>Words for orders and what happens to them.</summary>
public static class OrderWords
{
    /// <summary>How far an order is.</summary>
    public static string Of(OrderState state) => state switch
    {
        OrderState.Draft => "Draft",
        OrderState.Placed => "Placed",
        OrderState.PartlyReceived => "Partly received",
        OrderState.Received => "Received",
        OrderState.Cancelled => "Cancelled",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "There is no such state."),
    };

    /// <summary>What happened, as an act.</summary>
    public static string Of(OrderEventKind kind) => kind switch
    {
        OrderEventKind.Placed => "Placed",
        OrderEventKind.Confirmed => "Confirmed",
        OrderEventKind.BackOrdered => "On back-order",
        OrderEventKind.Received => "Received",
        OrderEventKind.Substituted => "Substituted",
        OrderEventKind.Cancelled => "Cancelled",
        OrderEventKind.Returned => "Returned",
        OrderEventKind.Credited => "Credit",
        OrderEventKind.RestockingCharged => "Restocking charge",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "There is no such event."),
    };

    /// <summary>An event in a sentence.</summary>
    public static string Of(OrderEvent e, PurchaseOrder order)
    {
        var line = order.Lines.FirstOrDefault(l => l.Line == e.Line);
        var what = line is null ? "" : $": {American.Number(e.Packs)} × {line.Description}";
        var money = e.Amount.ToDollars() == 0 ? "" : $", {American.Dollars(e.Amount.ToDollars())}";
        return $"{Of(e.Kind)}{what}{money}{(e.Until is { } until ? $", promised for {American.Day(until)}" : "")}{(e.Text.Length > 0 ? $" ({e.Text})" : "")}";
    }

    /// <summary>A number of packs as a counter clerk reads it.</summary>
    public static string Packs(OrderLine line, int packs) => (line.Unit, line.PackSize) switch
    {
        ("foot", var feet) => $"{American.Number(packs)} × {American.Number(feet)} ft",
        (_, 1) => American.Number(packs),
        (_, var pieces) => $"{American.Number(packs)} × pack of {American.Number(pieces)}",
    };
}
