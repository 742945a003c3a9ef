using System.Collections.Immutable;
using Estimator.Documents.Orders;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase.Orders;

namespace Estimator.Documents.Tests.Orders;

/// <summary>Purchase orders to write and read again.</summary>
public static class SampleOrders
{
    private static readonly DateOnly Day = new(2026, 3, 2);

    /// <summary>As it goes out; prices below the cent.</summary>
    public static OrderPaper Placed => Paper("1001", "Counter") with { Order = Order() };

    /// <summary>After all that can happen: by hand 303.77 + 38.40 + 35.00 + 1.50 + 3.00 - 12.00 = 369.67, where three coils of 101.2575 are 303.77 and six breakers of 6.40 are 38.40.</summary>
    public static OrderPaper Happened => Placed with
    {
        Order = Order(
            new(OrderEventKind.Placed, Day), Line(OrderEventKind.Received, 1, 2), Line(OrderEventKind.BackOrdered, 1, 1), Line(OrderEventKind.Cancelled, 2, 4), Line(OrderEventKind.Received, 2, 5),
            Line(OrderEventKind.Substituted, 2, 1) with { Text = "arc-fault", Amount = Money.FromDollars(1.5m) }, Line(OrderEventKind.Returned, 2, 2),
            new(OrderEventKind.Credited, Day) { Amount = Money.FromDollars(12) }, new(OrderEventKind.RestockingCharged, Day) { Amount = Money.FromDollars(3) }),
    };

    /// <summary>Seeds of the random orders.</summary>
    public static ImmutableArray<int> Seeds { get; } = [1, 2, 3, 4];

    /// <summary>An order with lines, prices below the cent and what happened to it drawn at random; the same seed, the same order.</summary>
    public static OrderPaper Random(int seed)
    {
        var random = new Random(seed);
        Money Dollars(int most) => Money.FromDollars(random.Next(most * 10_000) / 10_000m);
        var order = new PurchaseOrder([.. Enumerable.Range(1, random.Next(1, 12)).Select(n => new OrderLine(n, $"item-{n}", $"Item {n}", n % 3 == 0 ? "foot" : "each", random.Next(1, 251), random.Next(1, 40), Dollars(300), $"{n}"))], [new(OrderEventKind.Placed, Day)], Dollars(90));
        foreach (var kind in Enumerable.Range(0, 20).Select(_ => (OrderEventKind)random.Next(1, 12)))
        {
            var happened = new OrderEvent(kind, Day) { Line = random.Next(1, order.Lines.Length + 1), Packs = random.Next(1, 20), Amount = Dollars(20).RoundToCents(), Text = "something else", Until = Day };
            order = Enum.IsDefined(kind) && order.Refusal(happened) is null ? order with { Events = order.Events.Add(happened) } : order;
        }

        return Paper("1002", "Counter") with { Order = order };
    }

    /// <summary>Every text that a user types is one.</summary>
    public static OrderPaper Hostile(string text) => Paper(text, text) with { Account = text, Contact = text, Jobs = [text], Note = text, Way = "Delivery", Order = Order() with { Lines = [new OrderLine(1, "i", text, "each", 1, 1, Money.FromDollars(1), text)] } };

    private static OrderPaper Paper(string number, string supplier) => new(number, supplier, Order()) { Account = "A-17", Jobs = ["Basement finish", "Two-storey house"], Phase = "Rough-in", NeedBy = Day.AddDays(9), Way = "Delivery" };

    private static PurchaseOrder Order(params OrderEvent[] events) => new(
        [
            new OrderLine(1, "nm_b-12-2", "NM-B cable 12/2 with ground", "foot", 250, 3, Money.FromDollars(101.2575m), "77-12"),
            new OrderLine(2, "breaker-1-20-plain", "One-pole breaker, 20 A", "each", 1, 10, Money.FromDollars(6.4m), "=1002"),
        ],
        [.. events], Money.FromDollars(35));

    private static OrderEvent Line(OrderEventKind kind, int line, int packs) => new(kind, Day) { Line = line, Packs = packs };
}
