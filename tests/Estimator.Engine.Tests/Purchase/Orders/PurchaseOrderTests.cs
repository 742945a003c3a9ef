using System.Collections.Immutable;
using CsCheck;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase;
using Estimator.Engine.Purchase.Orders;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Purchase.Orders;

/// <summary>What becomes of a purchase order.</summary>
public sealed class PurchaseOrderTests
{
    private static readonly DateOnly Day = new(2026, 3, 2);

    private static readonly PurchaseOrder Draft = new(
        [
            new OrderLine(1, "nm_b-12-2", "NM-B cable 12/2 with ground", "foot", 250, 4, Money.FromDollars(100.125m), ""),
            new OrderLine(2, "breaker-1-20-plain", "One-pole breaker, 20 A", "each", 1, 10, Money.FromDollars(6), ""),
        ],
        [], Money.FromDollars(35));

    // By hand: four coils at 100.125 are 400.50, ten breakers 60.00, the delivery 35.00. Two coils come, one waits; a breaker is cancelled, five come, one of them another kind for 1.50 more,
    // two go back for a credit of 12.00 less 3.00 for restocking. 400.50 + 54.00 + 35.00 + 1.50 + 3.00 - 12.00 = 482.00.
    [Fact]
    public void Standing_AfterAllThatCanHappen_AddsUpByHand()
    {
        var order = After(
            Draft, new(OrderEventKind.Placed, Day), new(OrderEventKind.Confirmed, Day) { Until = Day.AddDays(3) }, Line(OrderEventKind.Received, 1, 2), Line(OrderEventKind.BackOrdered, 1, 1) with { Until = Day.AddDays(20) },
            Line(OrderEventKind.Cancelled, 2, 1), Line(OrderEventKind.Received, 2, 4), Line(OrderEventKind.Substituted, 2, 1) with { Text = "arc-fault", Amount = Money.FromDollars(1.5m) },
            Line(OrderEventKind.Returned, 2, 2), new(OrderEventKind.Credited, Day) { Amount = Money.FromDollars(12) }, new(OrderEventKind.RestockingCharged, Day) { Amount = Money.FromDollars(3) });

        Assert.Equal([(2, 0, 1, 0, 2, 4), (5, 1, 0, 2, 4, 7)], order.Standing.Select(l => (l.Received, l.Cancelled, l.BackOrdered, l.Returned, l.Open, l.Covers)));
        Assert.Equal((OrderState.PartlyReceived, 482m, Day.AddDays(20)), (order.State, order.Total.ToDollars(), order.Promised));
    }

    [Fact]
    public void State_FollowsWhatHappened()
    {
        var placed = After(Draft, new OrderEvent(OrderEventKind.Placed, Day));
        var received = After(placed, Line(OrderEventKind.Received, 1, 4), Line(OrderEventKind.Cancelled, 2, 10));
        var cancelled = After(placed, Line(OrderEventKind.Cancelled, 1, 4), Line(OrderEventKind.Cancelled, 2, 10));
        Assert.Equal([OrderState.Draft, OrderState.Placed, OrderState.Received, OrderState.Cancelled], new[] { Draft, placed, received, cancelled }.Select(o => o.State));
        Assert.Equal(0m, cancelled.Total.ToDollars());
    }

    [Fact]
    public void Refusal_OfWhatCannotBe_SaysHowManyCan()
    {
        var placed = After(Draft, new OrderEvent(OrderEventKind.Placed, Day));
        Assert.Contains("place it first", Draft.Refusal(Line(OrderEventKind.Received, 1, 1)), StringComparison.Ordinal);
        Assert.Contains("already", placed.Refusal(new(OrderEventKind.Placed, Day)), StringComparison.Ordinal);
        Assert.Contains("4 are still to come", placed.Refusal(Line(OrderEventKind.Received, 1, 5)), StringComparison.Ordinal);
        Assert.Contains("0 have come", placed.Refusal(Line(OrderEventKind.Returned, 1, 1)), StringComparison.Ordinal);
        Assert.Contains("no line 3", placed.Refusal(Line(OrderEventKind.Cancelled, 3, 1)), StringComparison.Ordinal);
        Assert.Contains("instead", placed.Refusal(Line(OrderEventKind.Substituted, 1, 1)), StringComparison.Ordinal);
        Assert.Contains("$0.00", placed.Refusal(new(OrderEventKind.Credited, Day)), StringComparison.Ordinal);
        Assert.Contains("day", placed.Refusal(new(OrderEventKind.Confirmed, Day)), StringComparison.Ordinal);
    }

    // Whatever is noted and not refused: no count falls below zero, and every pack is open, came or was cancelled.
    [Fact]
    public void Standing_AnyEventsThatAreTaken_StaysWithinThePacks() =>
        Gen.Select(Gen.Int[1, 9], Gen.Int[0, 3], Gen.Int[0, 6]).Array[0, 40].Sample(acts =>
        {
            var order = After(Draft, new OrderEvent(OrderEventKind.Placed, Day));
            foreach (var (kind, line, packs) in acts)
            {
                var e = Line((OrderEventKind)kind, line, packs) with { Text = "x", Amount = Money.FromDollars(packs), Until = Day };
                order = order.Refusal(e) is null ? order with { Events = order.Events.Add(e) } : order;
            }

            Assert.All(order.Standing, l =>
            {
                Assert.InRange(l.Open, 0, l.Line.Packs);
                Assert.InRange(l.BackOrdered, 0, l.Open);
                Assert.InRange(l.Returned, 0, l.Received);
                Assert.Equal(l.Line.Packs, l.Open + l.Received + l.Cancelled);
            });
        });

    // Need less shelf less orders: what is ordered for the jobs is not bought again, and what is cancelled is.
    [Fact]
    public void With_OrdersOfTheWholeNeed_LeavesNothingToBuy()
    {
        var estimate = SmallJobs.Estimate(SmallJobs.OneRoom(Engine.House.RoomKind.Bedroom, (Engine.House.DeviceKind.DuplexReceptacle, 6)));
        PurchasePlan Plan(StockOnHand? stock) => Buying.For(estimate.House.Job.Id, estimate.Takeoff, Catalogues.Shipped, stock);
        var lines = Plan(null).Lines.Where(l => !Catalogues.Shipped.Find(l.ItemId)!.Category.Equals("cable", StringComparison.Ordinal)).SelectMany(l => l.Packs.Select(p => (l, p)))
            .Select((x, i) => new OrderLine(i + 1, x.l.ItemId, x.l.Description, x.l.Unit, x.p.Offer.PackSize, x.p.Count, x.p.Offer.Price, "")).ToImmutableArray();
        var order = After(new PurchaseOrder(lines, [], Money.Zero), new OrderEvent(OrderEventKind.Placed, Day));
        PurchasePlan Rest(PurchaseOrder o) => Plan(OrderedStock.With(StockOnHand.Empty, [("1001", o)], Catalogues.Shipped));

        Assert.All(Rest(order).Lines.Where(l => lines.Any(o => o.Item == l.ItemId)), l => Assert.Empty(l.Packs));
        var cancelled = After(order, Line(OrderEventKind.Cancelled, 1, lines[0].Packs));
        Assert.Equal(lines[0].Packs * lines[0].PackSize, Rest(cancelled).Lines.Single(l => l.ItemId == lines[0].Item).Packs.Sum(p => p.Count * p.Offer.PackSize));
        var cable = OrderedStock.With(StockOnHand.Empty, [("1001", Draft)], Catalogues.Shipped).Pieces;
        Assert.Equal((4, Length.FromFeet(250)), (cable.Length, cable[0].Length));
    }

    private static OrderEvent Line(OrderEventKind kind, int line, int packs) => new(kind, Day) { Line = line, Packs = packs };

    private static PurchaseOrder After(PurchaseOrder order, params OrderEvent[] events)
    {
        foreach (var e in events)
        {
            Assert.Null(order.Refusal(e));
            order = order with { Events = order.Events.Add(e) };
        }

        return order;
    }
}
