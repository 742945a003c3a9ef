using Estimator.Data.Jobs;
using Estimator.Data.Orders;
using Estimator.Data.Suppliers;
using Estimator.Data.Tests.Databases;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase.Orders;
using Estimator.TestKit;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Data.Tests.Orders;

/// <summary>Purchase orders, on either database.</summary>
public abstract class OrderTests(TestDatabase database)
{
    private static readonly DateOnly Monday = new(2026, 3, 2);

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Load_AfterCreate_GivesTheSameOrder()
    {
        var (services, order) = await DraftAsync();
        var store = services.GetRequiredService<OrderStore>();
        var made = Assert.Single(await store.CreateAsync([order], Token));
        var read = (await store.LoadAsync(made.Id, Token))!;
        Assert.Equal(("1001", "=Counter", WorkPhase.RoughIn, Monday, SupplyWay.WillCall, "gate 3", "Sam"), (read.Number, read.Supplier, read.Phase, read.NeedBy, read.Way, read.Note, read.Who));
        Assert.Equal(order.Jobs, read.Jobs);
        Assert.Equal(order.Order.Lines, read.Order.Lines);
        Assert.Equal(order.Order.Total, read.Order.Total);
        Assert.Equal(OrderState.Draft, read.Order.State);
        Assert.Empty(await (await database.NewCompanyAsync()).GetRequiredService<OrderStore>().ListAsync(Token));
    }

    [Fact]
    public async Task Create_ByManyAtTheSameTime_GivesEachANumberOfItsOwn()
    {
        var (services, order) = await DraftAsync();
        var store = services.GetRequiredService<OrderStore>();
        await Task.WhenAll(Enumerable.Range(1, 5).Select(_ => Task.Run(() => store.CreateAsync([order, order], Token))));
        Assert.Equal(Enumerable.Range(1001, 10).Select(n => $"{n}"), (await store.ListAsync(Token)).Select(o => o.Number).Order());
    }

    [Fact]
    public async Task Note_EventsOneAfterAnother_AreKeptWithWhoAndWhen()
    {
        var (services, order) = await DraftAsync();
        var store = services.GetRequiredService<OrderStore>();
        var made = (await store.CreateAsync([order], Token))[0];
        var placed = (await store.NoteAsync(made.Id, made.Version, [new(OrderEventKind.Placed, Monday)], "Sam", Token)).Stored;
        OrderEvent came = new(OrderEventKind.Received, Monday.AddDays(2)) { Line = 1, Packs = 1, Text = "slip 9" };
        OrderEvent waits = new(OrderEventKind.BackOrdered, Monday.AddDays(2)) { Line = 1, Packs = 1, Until = Monday.AddDays(9) };
        OrderEvent credit = new(OrderEventKind.Credited, Monday.AddDays(3)) { Amount = Money.FromDollars(5.25m) };
        Assert.True((await store.NoteAsync(made.Id, placed.Version, [came, waits, credit], "Kim", Token)).Saved);
        var read = (await store.ForJobsAsync(["small"], Token)).Single();
        Assert.Equal([came, waits, credit], read.Order.Events.Skip(1));
        Assert.Equal(["Sam", "Kim", "Kim", "Kim"], read.Noted.Select(n => n.Who));
        Assert.Equal(OrderState.PartlyReceived, read.Order.State);
        Assert.Empty(await store.ForJobsAsync(["other"], Token));
    }

    [Fact]
    public async Task Note_AfterSomebodyElseNoted_WritesNothing()
    {
        var (services, order) = await DraftAsync();
        var store = services.GetRequiredService<OrderStore>();
        var made = (await store.CreateAsync([order], Token))[0];
        var saves = await Task.WhenAll(Enumerable.Range(1, 4).Select(_ => Task.Run(() => store.NoteAsync(made.Id, made.Version, [new(OrderEventKind.Placed, Monday)], "Sam", Token))));
        Assert.Single(saves, s => s.Saved);
        Assert.Single((await store.LoadAsync(made.Id, Token))!.Order.Events);
    }

    [Fact]
    public async Task Note_WhatCannotBe_IsRefusedWhole()
    {
        var (services, order) = await DraftAsync();
        var store = services.GetRequiredService<OrderStore>();
        var made = (await store.CreateAsync([order], Token))[0];
        OrderEvent[] events = [new(OrderEventKind.Placed, Monday), new(OrderEventKind.Received, Monday) { Line = 1, Packs = 99 }];
        Assert.Contains("99 packs", (await Assert.ThrowsAsync<ArgumentException>(() => store.NoteAsync(made.Id, made.Version, events, "Sam", Token))).Message, StringComparison.Ordinal);
        Assert.Empty((await store.LoadAsync(made.Id, Token))!.Order.Events);
    }

    [Fact]
    public async Task Change_Draft_TakesNumberDayAndWay()
    {
        var (services, order) = await DraftAsync();
        var store = services.GetRequiredService<OrderStore>();
        var made = await store.CreateAsync([order, order], Token);
        var changed = await store.ChangeAsync(made[0] with { Number = "PO-7", NeedBy = null, Way = SupplyWay.Delivery, Order = made[0].Order with { Delivery = Money.FromDollars(35) } }, Token);
        Assert.Equal((true, "PO-7", null, 35m), (changed.Saved, changed.Stored.Number, changed.Stored.NeedBy, changed.Stored.Order.Delivery.ToDollars()));
        Assert.Contains("PO-7", (await Assert.ThrowsAsync<ArgumentException>(() => store.ChangeAsync(made[1] with { Number = "PO-7" }, Token))).Message, StringComparison.Ordinal);
        await store.NoteAsync(made[1].Id, made[1].Version, [new(OrderEventKind.Placed, Monday)], "Sam", Token);
        var late = (await store.LoadAsync(made[1].Id, Token))!;
        await Assert.ThrowsAsync<ArgumentException>(() => store.ChangeAsync(late with { Number = "PO-8" }, Token));
    }

    [Fact]
    public async Task DeleteJob_WithAnOrder_KeepsTheOrder()
    {
        var (services, order) = await DraftAsync();
        var (store, jobs) = (services.GetRequiredService<OrderStore>(), services.GetRequiredService<JobStore>());
        await store.CreateAsync([order], Token);
        await jobs.SetArchivedAsync("small", true, Token);
        Assert.True(await jobs.DeleteAsync("small", Token));
        Assert.Empty(Assert.Single(await store.ListAsync(Token)).Jobs);
    }

    private async Task<(ServiceProvider Services, StoredOrder Order)> DraftAsync()
    {
        var services = await database.NewCompanyAsync();
        var supplier = (await services.GetRequiredService<SupplierStore>().SaveAsync(new Supplier { Name = "=Counter" }, Token)).Stored;
        var job = (await services.GetRequiredService<JobStore>().CreateAsync(SmallJobs.OneRoom(Engine.House.RoomKind.Bedroom) with { Id = "small" }, "Sam", Token)).Job;
        return (services, new StoredOrder
        {
            SupplierId = supplier.Id,
            Supplier = supplier.Name,
            Jobs = [(job.Id, job.Name)],
            Phase = WorkPhase.RoughIn,
            NeedBy = Monday,
            Way = SupplyWay.WillCall,
            Note = "gate 3",
            Who = "Sam",
            Order = new PurchaseOrder(
                [new OrderLine(1, "nm_b-12-2", "NM-B cable 12/2 with ground", "foot", 250, 2, Money.FromDollars(101.2575m), "=1001"), new OrderLine(2, "plate-1", "Plate", "each", 10, 1, Money.FromDollars(4.1m), "")],
                [], Money.FromDollars(12.5m)),
        });
    }
}
