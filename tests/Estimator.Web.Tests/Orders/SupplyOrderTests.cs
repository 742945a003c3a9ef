using System.Collections.Immutable;
using Bunit;
using Estimator.Data.Jobs;
using Estimator.Data.Orders;
using Estimator.Data.Suppliers;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase.Orders;
using Estimator.Engine.Purchase.PriceFiles;
using Estimator.Web.Catalogues;
using Estimator.Web.Figures;
using Estimator.Web.Orders;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Web.Tests.Orders;

/// <summary>From a saved job to orders at suppliers, and what happens to them.</summary>
public sealed class SupplyOrderTests : WebContext
{
    private const string NotOffered = "nm_b-14-2";

    private OrderStore Orders => Services.GetRequiredService<OrderStore>();

    private OrderDesk OrderDesk => Services.GetRequiredService<OrderDesk>();

    // Two suppliers ask what the samples ask, the second a tenth more; the first lacks breakers and charges 40 a delivery, the second 15 with orders from 100.
    [Fact]
    public async Task Make_TwoSuppliers_PricesEachWayAndExplainsIt()
    {
        var ask = await SavedAsync();
        var (order, already) = (await OrderDesk.MakeAsync(ask, Token))!.Value;
        Assert.Empty(already);
        var options = order.Supply!.Options.ToDictionary(o => o.Wish);
        Assert.True(options[SupplyWish.Split].Total.Value <= options[SupplyWish.One].Total.Value);
        Assert.All(options.Values, o => Assert.Equal(o.Choice.Total.ToDollars(), o.Total.Value));
        Assert.All(options.Values, o => Assert.Contains(NotOffered, o.Choice.Missing));
        Assert.Equal(order.Way!.Orders.Sum(o => o.Goods.Value), order.Plan.Total.Value);
        Assert.Null(order.Plan.Lines.Single(l => l.ItemId == NotOffered).Cost);
        Assert.Contains(order.ToSettle, t => t.Contains("ended on Jan 1, 2020", StringComparison.Ordinal));

        // Every figure opens down to leaves.
        var (seen, open) = (new HashSet<NodeRef>(), new Stack<NodeRef>(options.Values.Select(o => o.Total.Node)));
        while (open.TryPop(out var at))
        {
            var node = order.Source.Book[at];
            Assert.True(!node.Inputs.IsEmpty || node.Operation is Operation.Given or Operation.Row or Operation.Constant or Operation.Sum, $"{node.Label} ends in {node.Operation}");
            foreach (var input in node.Inputs.Where(seen.Add))
            {
                open.Push(input);
            }
        }

        Assert.True(seen.Count > 100, $"only {seen.Count} figures");
        var preferred = (await OrderDesk.MakeAsync(ask with { Preferred = "Dear", Within = 10, Wish = SupplyWish.Preferred }, Token))!.Value.Order;
        Assert.Equal(["Dear"], preferred.Way!.Orders.Select(o => o.Order.Supplier));
    }

    [Fact]
    public async Task EndedQuotes_OfAPurchase_AreNamedWithSupplierAndDay()
    {
        var ask = await SavedAsync();
        var plan = (await OrderDesk.MakeAsync(ask with { Preferred = "Dear", Within = 10, Wish = SupplyWish.Preferred }, Token))!.Value.Order.Plan;
        var shown = Render<Web.Purchase.EndedQuotes>(p => p.Add(e => e.Plan, plan));
        Assert.Contains("at Dear, Jan 1, 2020", shown.Markup, StringComparison.Ordinal);
        Assert.Equal("", Render<Web.Purchase.EndedQuotes>(p => p.Add(e => e.Plan, plan with { Lines = [] })).Markup);
    }

    [Fact]
    public async Task Write_Orders_OnePerSupplierAndNothingIsLeftToBuy()
    {
        var ask = await SavedAsync();
        var (order, _) = (await OrderDesk.MakeAsync(ask, Token))!.Value;
        var written = await OrderDesk.WriteAsync(order, ask, new DateOnly(2031, 5, 1), Token);
        Assert.Equal(order.Way!.Choice.Orders.Select(o => (o.Supplier, o.Goods + o.Delivery)), written.Select(w => (w.Supplier, w.Order.Total)));
        Assert.All(written, w => Assert.Equal(new DateOnly(2031, 5, 1), w.NeedBy));

        var (rest, already) = (await OrderDesk.MakeAsync(ask, Token))!.Value;
        Assert.Equal(written.Length, already.Length);
        Assert.All(rest.Plan.Lines.Where(l => l.ItemId != NotOffered), l => Assert.Empty(l.Packs));
        Assert.Empty(rest.Way!.Choice.Orders);

        // A line that is cancelled is bought again.
        var line = written[0].Order.Lines[0];
        await Orders.NoteAsync(written[0].Id, written[0].Version, [new(OrderEventKind.Cancelled, OrderDesk.Today) { Line = 1, Packs = line.Packs }], "Sam", Token);
        Assert.NotEmpty((await OrderDesk.MakeAsync(ask, Token))!.Value.Order.Plan.Lines.Single(l => l.ItemId == line.Item).Packs);
    }

    [Fact]
    public async Task Make_OnePhaseAfterAnother_BuysEachItemOnce()
    {
        var ask = await SavedAsync();
        var all = (await OrderDesk.MakeAsync(ask, Token))!.Value.Order.Plan.Lines.Select(l => l.ItemId);
        List<string> parts = [];
        foreach (var phase in Enum.GetValues<WorkPhase>())
        {
            parts.AddRange((await OrderDesk.MakeAsync(ask with { Phase = phase }, Token))!.Value.Order.Plan.Lines.Select(l => l.ItemId));
        }

        Assert.Equal(all.Order(StringComparer.Ordinal), parts.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task OrderPage_WithSuppliers_ShowsTheWaysAndWritesOrders()
    {
        var ask = await SavedAsync();
        var navigation = Services.GetRequiredService<NavigationManager>();
        navigation.NavigateTo(ask.Address("/order"));
        var page = Render<OrderPage>();
        await page.WaitForElementAsync(".ways tbody tr", TimeSpan.FromSeconds(60));
        Assert.Equal(2, page.FindAll(".ways tbody tr").Count);
        Assert.Contains("14/2", page.Find(".missing").TextContent, StringComparison.Ordinal);
        await page.Find(".writes button.act").ClickAsync(new());
        page.WaitForState(() => navigation.Uri.EndsWith("/orders", StringComparison.Ordinal), TimeSpan.FromSeconds(30));

        var orders = await Orders.ListAsync(Token);
        var list = Render<OrdersPage>();
        list.WaitForAssertion(() => Assert.Equal(orders.Length, list.FindAll("tbody tr").Count));
        Assert.Contains(American.Dollars(orders[0].Order.Total.ToDollars()), list.Find("tbody tr").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task PurchaseOrderPage_PlacedAndReceived_NotesBoth()
    {
        var id = await OrderAsync();
        var page = Render<PurchaseOrderPage>(p => p.Add(x => x.Id, id));
        page.WaitForState(() => page.FindAll(".page-head button.act").Count > 0);
        await page.Find(".page-head button.act").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Contains("placed", page.Find(".page-head p").TextContent, StringComparison.Ordinal));

        await page.Find("tbody .lk").ClickAsync(new());
        await page.FindAll("aside input")[0].ChangeAsync(new() { Value = "99" });
        await page.FindAll("aside button.act")[1].ClickAsync(new());
        Assert.Contains("99 packs", page.Find("aside .problem").TextContent, StringComparison.Ordinal);
        await page.FindAll("aside input")[0].ChangeAsync(new() { Value = "1" });
        await page.FindAll("aside button.act")[1].ClickAsync(new());
        page.WaitForAssertion(() => Assert.Contains("partly received", page.Find(".page-head p").TextContent, StringComparison.Ordinal));
        await page.FindAll("aside button.act")[0].ClickAsync(new());
        page.WaitForAssertion(() => Assert.Contains(", received", page.Find(".page-head p").TextContent, StringComparison.Ordinal));
        Assert.Equal(OrderState.Received, (await Orders.LoadAsync(id, Token))!.Order.State);
    }

    [Fact]
    public async Task PurchaseOrderPage_Draft_TakesANumberThatNoOtherHas()
    {
        var (first, second) = (await OrderAsync(), await OrderAsync());
        var page = Render<PurchaseOrderPage>(p => p.Add(x => x.Id, second));
        page.WaitForState(() => page.FindAll("aside input").Count > 0);
        await page.FindAll("aside input")[0].ChangeAsync(new() { Value = (await Orders.LoadAsync(first, Token))!.Number });
        await page.Find("aside button.act").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Contains("Another order has the number", page.Find(".problem").TextContent, StringComparison.Ordinal));
        await page.FindAll("aside input")[0].ChangeAsync(new() { Value = "<b>7" });
        await page.Find("aside button.act").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Equal("Order <b>7", page.Find("h1").TextContent));
    }

    [Theory]
    [InlineData("order.xlsx", "PK")]
    [InlineData("order.csv", "\uFEFForder,line")]
    public async Task HandOut_Order_IsTheFile(string file, string start)
    {
        var id = await OrderAsync();
        var given = Assert.IsType<FileContentHttpResult>(await HandOutAsync(id, file));
        Assert.StartsWith(start, System.Text.Encoding.UTF8.GetString(given.FileContents.Span), StringComparison.Ordinal);
        Assert.IsType<NotFound>(await HandOutAsync(id, "secret.txt"));
        Assert.IsType<NotFound>(await HandOutAsync(id + 1, file));
    }

    private Task<Microsoft.AspNetCore.Http.IResult> HandOutAsync(int id, string file) => PurchaseOrderFiles.HandOutAsync(
        id, file, Orders, Services.GetRequiredService<SupplierStore>(), Services.GetRequiredService<Data.Companies.CompanyStore>(), TimeProvider.System, Token);

    private async Task<int> OrderAsync()
    {
        var job = (await Services.GetRequiredService<JobStore>().CreateAsync(Web.Jobs.JobStarts.Sample("basement-finish"), "Sam", Token)).Job;
        var suppliers = Services.GetRequiredService<SupplierStore>();
        var supplier = (await suppliers.ListAsync(Token)).FirstOrDefault() ?? (await suppliers.SaveAsync(new Supplier { Name = "Counter" }, Token)).Stored;
        return (await Orders.CreateAsync([new StoredOrder
        {
            SupplierId = supplier.Id, Supplier = supplier.Name, Jobs = [(job.Id, job.Name)], Who = "Sam",
            Order = new PurchaseOrder([new OrderLine(1, "breaker-1-20-plain", "One-pole breaker, 20 A", "each", 1, 3, Money.FromDollars(6.4m), "1002")], [], Money.Zero),
        }], Token))[0].Id;
    }

    private async Task<OrderAsk> SavedAsync()
    {
        await PriceAsync("Near", new Supplier { Name = "Near", Delivery = Money.FromDollars(40) }, 1m, o => !o.Item.StartsWith("breaker", StringComparison.Ordinal));
        await PriceAsync("Dear", new Supplier { Name = "Dear", Delivery = Money.FromDollars(15), Minimum = Money.FromDollars(100) }, 1.1m, _ => true);
        await Services.GetRequiredService<LocalPriceShelf>().RefreshAsync(Token);
        await OpenSampleAsync();
        await Desk.SaveRevisionAsync("", Token);
        return new OrderAsk([Desk.Job.Id]);
    }

    private async Task PriceAsync(string name, Supplier supplier, decimal times, Func<Offer, bool> has)
    {
        var id = (await Services.GetRequiredService<SupplierStore>().SaveAsync(supplier, Token)).Stored.Id;
        var builtIn = CatalogueShelf.BuiltIn().Parts;
        ImmutableArray<PackChange> prices =
        [
            .. builtIn.Items.Where(i => i.Id != NotOffered).SelectMany(i => builtIn.OffersFor(i.Id)).Where(o => o.Supplier == "sample-a" && has(o)).Select((o, i) => new PackChange(
                PackChangeKind.New, o.Item, o.PackSize, null, o.Price * times,
                new PriceRow(i + 2, o.Item, $"{name}-{i}", "", "", 1, PriceUnit.Each, o.PackSize, new DateOnly(2019, 6, 1), name == "Dear" ? new DateOnly(2020, 1, 1) : null, "", ""))),
        ];
        Assert.NotNull(await Services.GetRequiredService<SupplierPriceStore>().WriteAsync(new NewPrices(id, 0, "a.csv", "h", "Sam", new DateOnly(2019, 6, 1), ColumnMatching.None, prices), Token));
    }
}
