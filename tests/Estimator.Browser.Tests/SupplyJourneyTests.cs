using System.Globalization;
using ClosedXML.Excel;
using Estimator.Engine;
using Estimator.Engine.Catalogue;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase;
using Estimator.Engine.Purchase.Suppliers;
using Estimator.TestKit;
using Microsoft.Playwright;

namespace Estimator.Browser.Tests;

/// <summary>The office person: two open jobs, two suppliers with their price files, two orders. Its figures are worked out again by the engine. On a server of its own, whose prices are no other test's.</summary>
public sealed class SupplyJourneyTests(RunningPages pages, ITestOutputHelper output)
{
    private const int OfficeSeconds = 5 * 60;
    private const string Near = "Near Counter";
    private const string Far = "Far Counter";
    private const decimal NearDelivery = 40;
    private const decimal FarDelivery = 25;

    private static readonly List<Offer> Samples = [.. Catalogues.Shipped.Items.SelectMany(i => Catalogues.Shipped.OffersFor(i.Id)).Where(o => o.Supplier == "sample-a")];

    [Theory]
    [InlineData(Screen.Desk)]
    [InlineData(Screen.Phone)]
    public async Task OfficePerson_WithTwoPriceFiles_OrdersAtTwoSuppliers(Screen screen)
    {
        using var folder = new PassingFolder();
        await using var server = await RunningServer.StartAsync(folder.Path);
        await using var visit = await pages.OpenAsync(server, screen);
        var (page, hands) = (visit.Page, new Hands(visit.Page));
        var (jobs, estimates) = (new List<string>(), new List<JobEstimate>());
        foreach (var sample in new[] { "Basement finish", "Two-storey house" })
        {
            jobs.Add(await visit.StartSampleAsync(sample));
            await page.GetByRole(AriaRole.Link, new() { Name = "Purchase" }).First.ClickAsync();
            await page.GetByRole(AriaRole.Button, new() { Name = "Save revision 1" }).ClickAsync();
            await page.GetByRole(AriaRole.Link, new() { Name = "Purchase workbook", Exact = true }).WaitForAsync();
            estimates.Add(await AgainAsync(visit, jobs[^1]));
        }

        await visit.GoAsync("/suppliers");
        await AddAsync(visit, hands, Near, NearDelivery);
        await AddAsync(visit, hands, Far, FarDelivery);
        var (near, far) = (NearFile(folder.Path), FarFile(folder.Path));

        // The first file calls its price "Value", which no guess knows: the person says it.
        await ReadAsync(visit, hands, Near, near.Path, near.Offers.Count, async () =>
        {
            await Assertions.Expect(page.GetByText("No column is matched with the price")).ToBeVisibleAsync();
            await page.GetByLabel("Price", new() { Exact = true }).SelectOptionAsync("Value");
        });
        await ReadAsync(visit, hands, Far, far.Path, far.Offers.Count, () => Task.CompletedTask);

        await visit.GoAsync("/");
        await hands.ClickAsync(page.GetByRole(AriaRole.Link, new() { Name = "Buy", Exact = true }).First);
        foreach (var job in jobs)
        {
            await hands.ClickAsync(page.Locator($"input[data-job='{job}']"));
            await page.WaitForURLAsync($"**/order?*{job}*");
            await page.GetByRole(AriaRole.Table, new() { Name = "Ways to buy" }).WaitForAsync();
        }

        var choice = Expected(estimates, [.. near.Offers, .. far.Offers]);
        Assert.Equal(2, choice.Orders.Length);
        await Assertions.Expect(page.GetByRole(AriaRole.Table, new() { Name = "Ways to buy" }).Locator("tbody tr").First).ToContainTextAsync(Dollars(choice.Total));
        Assert.Empty(await visit.AccessibilityProblemsAsync());
        await hands.ClickAsync(page.GetByRole(AriaRole.Button, new() { Name = "Write 2 orders" }));
        await page.WaitForURLAsync("**/orders");

        foreach (var order in choice.Orders)
        {
            await visit.GoAsync("/orders");
            await page.GetByRole(AriaRole.Table, new() { Name = "Orders" }).WaitForAsync();
            Assert.Empty(await visit.AccessibilityProblemsAsync());
            var row = page.Locator("tbody tr", new() { HasText = order.Supplier });
            await Assertions.Expect(row).ToContainTextAsync(Dollars(order.Total));
            await hands.ClickAsync(row.Locator("a"));
            await hands.ClickAsync(page.GetByRole(AriaRole.Button, new() { Name = "Note as placed" }));
            await Assertions.Expect(page.Locator("[data-total]")).ToHaveTextAsync(Dollars(order.Total));
            Assert.Empty(await visit.AccessibilityProblemsAsync());
            var link = page.GetByRole(AriaRole.Link, new() { Name = "Order workbook" });
            var file = await page.RunAndWaitForDownloadAsync(() => hands.ClickAsync(link));
            using var book = new XLWorkbook(new MemoryStream(await File.ReadAllBytesAsync((await file.PathAsync())!, TestContext.Current.CancellationToken)));
            Assert.Equal(order.Total.ToDollars(), book.NamedRange("OrderTotal").Ranges.First().FirstCell().GetValue<decimal>());
        }

        foreach (var address in new[] { "/stock", "/suppliers", "/catalogue" })
        {
            await visit.GoAsync(address);
            await page.WaitForTimeoutAsync(400);
            await (address == "/catalogue" ? page.Locator("tbody .lk").First.ClickAsync() : Task.CompletedTask);
            Assert.Empty(await visit.AccessibilityProblemsAsync());
        }

        output.WriteLine(hands.Told);
        Assert.Empty(visit.Faults);
        Assert.True(hands.Seconds <= OfficeSeconds, $"{hands.Told}, {OfficeSeconds} s are allowed");
    }

    private static SupplyChoice Expected(List<JobEstimate> estimates, IEnumerable<Offer> offers)
    {
        var catalogue = Catalogues.Shipped.WithPrices(offers).WithOffers(o => !o.IsSample);
        SupplierTerms[] terms = [new(Near, Money.FromDollars(NearDelivery), Money.Zero, null), new(Far, Money.FromDollars(FarDelivery), Money.Zero, null)];
        return SupplyChoosing.Split(SupplyPlans.Of([.. estimates.Select(e => (e.House.Job.Id, e.Takeoff))], catalogue, StockOnHand.Empty, terms).Table);
    }

    // All but breakers, each row a pack at its price.
    private static (string Path, List<Offer> Offers) NearFile(string folder)
    {
        var path = Path.Combine(folder, "near.csv");
        List<Offer> offers = [.. Samples.Where(o => !o.Item.StartsWith("breaker", StringComparison.Ordinal)).Select(o => o with { Supplier = Near, Note = "" })];
        File.WriteAllLines(path, offers.Select((o, i) => FormattableString.Invariant($"N-{i},{o.Item},\"=words, {o.Item}\",{o.Price.ToDollars()},PK {o.PackSize}")).Prepend("Part No,Our item,Description,Value,Per").Append("N-9999,,\"Not ours\",3.00,EA"));
        return (path, offers);
    }

    // A workbook by the thousand, dearer by a tenth.
    private static (string Path, List<Offer> Offers) FarFile(string folder)
    {
        var path = Path.Combine(folder, "far.xlsx");
        using var book = new XLWorkbook();
        var sheet = book.AddWorksheet("Prices");
        foreach (var (head, c) in new[] { "Item Number", "Our item", "Net Price", "UOM", "Pack Qty" }.Select((h, i) => (h, i + 1)))
        {
            sheet.Cell(3, c).Value = head;
        }

        List<Offer> offers = [];
        foreach (var (o, i) in Samples.Select((o, i) => (o, i)))
        {
            var byThousand = decimal.Round(o.Price.ToDollars() * 1.1m / o.PackSize * 1000, 2, MidpointRounding.AwayFromZero);
            sheet.Cell(4 + i, 1).SetValue($"H{i}");
            sheet.Cell(4 + i, 2).SetValue(o.Item);
            sheet.Cell(4 + i, 3).Value = byThousand;
            sheet.Cell(4 + i, 4).SetValue("M");
            sheet.Cell(4 + i, 5).Value = o.PackSize;
            offers.Add(o with { Supplier = Far, Note = "", Price = Money.FromDollars(decimal.Round(byThousand * o.PackSize / 1000, 4, MidpointRounding.AwayFromZero)) });
        }

        book.SaveAs(path);
        return (path, offers);
    }

    private static async Task AddAsync(Visit visit, Hands hands, string name, decimal delivery)
    {
        await hands.ClickAsync(visit.Page.GetByRole(AriaRole.Button, new() { Name = "Add supplier" }));
        await hands.FillAsync(visit.Page.GetByLabel("Name", new() { Exact = true }), name);
        await hands.FillAsync(visit.Page.GetByLabel("A delivery costs, $"), delivery.ToString(CultureInfo.InvariantCulture));
        await hands.ClickAsync(visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save supplier" }));
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = $"Read a price file of {name}" }).WaitForAsync();
    }

    private static async Task ReadAsync(Visit visit, Hands hands, string supplier, string path, int prices, Func<Task> match)
    {
        var page = visit.Page;
        await visit.GoAsync("/suppliers");
        await hands.ClickAsync(page.GetByRole(AriaRole.Link, new() { Name = $"Read a price file of {supplier}" }));
        await page.GetByRole(AriaRole.Heading, new() { Name = "Files read so far" }).WaitForAsync();
        await visit.ChooseFileAsync(path);
        var look = page.GetByRole(AriaRole.Button, new() { Name = "Look through the file" });
        await look.WaitForAsync();
        await match();
        Assert.Empty(await visit.AccessibilityProblemsAsync());
        await hands.ClickAsync(look);
        await page.GetByRole(AriaRole.Heading, new() { Name = "What the file changes" }).WaitForAsync();
        Assert.Empty(await visit.AccessibilityProblemsAsync());
        await hands.ClickAsync(page.GetByRole(AriaRole.Button, new() { Name = $"Write {prices.ToString("#,0", CultureInfo.InvariantCulture)} prices" }));
        await Assertions.Expect(page.Locator(".said")).ToContainTextAsync("written");
        Assert.Empty(await visit.AccessibilityProblemsAsync());
    }

    private static async Task<JobEstimate> AgainAsync(Visit visit, string id)
    {
        var text = await visit.Page.EvaluateAsync<string>("async address => await (await fetch(address)).text()", $"/jobs/{id}/revisions/1/job.json");
        return JobEstimate.Compute(JobFile.Read(text, "job.json").Job, Catalogues.Shipped);
    }

    private static string Dollars(Money money) => money.ToDollars().ToString("$#,0.00", CultureInfo.InvariantCulture);
}
