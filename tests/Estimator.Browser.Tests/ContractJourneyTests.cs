using System.Globalization;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace Estimator.Browser.Tests;

/// <summary>The contractor wins a job, changes it and is paid: what the pages say is what the papers say, and the invoices add up to the contract with its change.</summary>
public sealed class ContractJourneyTests(RunningPages pages)
{
    [Theory]
    [InlineData(Screen.Desk)]
    [InlineData(Screen.Phone)]
    public async Task Contractor_WhoWonAJob_ChangesItAndIsPaid(Screen screen)
    {
        await using var visit = await pages.OpenAsync(screen);
        var page = visit.Page;
        ILocator Button(string name) => page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });
        var address = $"/jobs/{await visit.StartSampleAsync("Basement finish")}";
        await ContractAsync(visit, address);
        await page.GetByLabel("Retainage, of the work done").FillAsync("10");
        await page.GetByLabel("Retainage, of the work done").PressAsync("Tab");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Schedule of values" })).ToBeVisibleAsync();
        Assert.Empty(await visit.AccessibilityProblemsAsync());

        await Button("Save revision 1").ClickAsync();
        await page.GetByLabel("To", new() { Exact = true }).FillAsync("Sample customer");
        await Button("Send revision 1").ClickAsync();
        await Button("Accepted").WaitForAsync();
        Assert.Empty(await visit.AccessibilityProblemsAsync());
        var sent = await BytesAsync(page, "As sent: customer.pdf");
        await Button("Accepted").ClickAsync();
        await page.GetByRole(AriaRole.Heading, new() { Name = "Where the contract stands" }).WaitForAsync();
        var bid = await AmountAsync(page, "[data-sum=contract]");
        Assert.Contains(Dollars(bid)[..^3], Text(sent), StringComparison.Ordinal);

        // A receptacle more, in another revision, becomes a change order; the price of the contract stands until it is accepted.
        await visit.GoAsync($"{address}/rooms");
        var receptacles = page.Locator("table.roomgrid tbody tr").First.Locator("input.val").First;
        await receptacles.FillAsync("1");
        await receptacles.PressAsync("Tab");
        await Assertions.Expect(page.Locator("header.title")).ToContainTextAsync("1, 1 edit since");
        await ContractAsync(visit, address);
        await Button("Save revision 2").ClickAsync();
        await page.GetByLabel("Why").FillAsync("One more outlet");
        await Button("Write change order to revision 2").ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Change order 1" }).ClickAsync();
        var change = await AmountAsync(page, "[data-change]");
        Assert.InRange(change, 1m, bid / 4);
        await Button("Note as sent").ClickAsync();
        await Button("Accepted").WaitForAsync();
        Assert.Empty(await visit.AccessibilityProblemsAsync());
        Assert.Contains(Dollars(bid + change), Text(await BytesAsync(page, "Change order as PDF")), StringComparison.Ordinal);
        await Button("Accepted").ClickAsync();
        await Assertions.Expect(page.Locator(".page-head p")).ToContainTextAsync("accepted");
        await page.GetByRole(AriaRole.Link, new() { Name = "Compare the two revisions" }).ClickAsync();
        await Assertions.Expect(page.Locator("[data-change=Openings]")).ToHaveTextAsync("+1");
        Assert.Empty(await visit.AccessibilityProblemsAsync());

        await ContractAsync(visit, address);
        Assert.Equal(bid + change, await AmountAsync(page, "[data-sum=contract]"));
        await Button("Rough-in passed").ClickAsync();
        await page.GetByText("the wiring is frozen").WaitForAsync();
        await Button("Invoice the deposit").ClickAsync();
        var due = await InvoicedAsync(visit, address, 1, "Deposit before the work starts");
        await page.GetByLabel("Rough-in, ready for rough inspection, done to date, percent").FillAsync("100");
        await page.GetByLabel("Rough-in, ready for rough inspection, done to date, percent").PressAsync("Tab");
        await Button("Invoice the work done").ClickAsync();
        due += await InvoicedAsync(visit, address, 2, "Retained until the end");
        await Button("Final invoice").ClickAsync();
        due += await InvoicedAsync(visit, address, 3, "Retained before, paid now");
        Assert.Equal(bid + change, due);
        foreach (var (what, amount) in new[] { ("asked", due), ("paid", due), ("open", 0m) })
        {
            Assert.Equal(amount, await AmountAsync(page, $"[data-sum={what}]"));
        }

        Assert.Empty(await visit.AccessibilityProblemsAsync());
        Assert.Equal(sent, await BytesAsync(page, "As sent: customer.pdf"));
        await visit.GoAsync("/");
        Assert.Empty(visit.Faults);
    }

    private static async Task ContractAsync(Visit visit, string address)
    {
        await visit.GoAsync($"{address}/contract");
        await visit.Page.GetByRole(AriaRole.Heading, new() { Name = "Revisions" }).WaitForAsync();
    }

    // The last invoice: sent, read on page, PDF and CSV, and paid.
    private static async Task<decimal> InvoicedAsync(Visit visit, string address, int invoices, string says)
    {
        var page = visit.Page;
        var rows = page.GetByRole(AriaRole.Table, new() { Name = "Invoices" }).Locator("tbody tr");
        await Assertions.Expect(rows).ToHaveCountAsync(invoices);
        await rows.Last.Locator("a").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Note as sent" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Note payment" }).WaitForAsync();
        Assert.Empty(await visit.AccessibilityProblemsAsync());
        var due = await AmountAsync(page, "[data-due]");
        var pdf = Text(await BytesAsync(page, "Invoice as PDF"));
        Assert.Contains(says, pdf, StringComparison.Ordinal);
        Assert.Contains(Dollars(due), pdf, StringComparison.Ordinal);
        var csv = System.Text.Encoding.UTF8.GetString(await BytesAsync(page, "Invoice as CSV"));
        Assert.Equal(due, decimal.Parse(csv.Split("\r\n").Single(r => r.Contains(",due,due,", StringComparison.Ordinal)).Split(',')[6], CultureInfo.InvariantCulture));
        await page.GetByRole(AriaRole.Button, new() { Name = "Note payment" }).ClickAsync();
        await Assertions.Expect(page.Locator("[data-open]")).ToHaveTextAsync("$0.00");
        await ContractAsync(visit, address);
        return due;
    }

    private static async Task<byte[]> BytesAsync(IPage page, string link)
    {
        var file = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = link }).ClickAsync());
        return await File.ReadAllBytesAsync((await file.PathAsync())!, TestContext.Current.CancellationToken);
    }

    private static async Task<decimal> AmountAsync(IPage page, string where) =>
        decimal.Parse((await page.Locator(where).InnerTextAsync()).Replace("$", "", StringComparison.Ordinal).Replace(",", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);

    private static string Text(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return string.Join(' ', document.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
    }

    private static string Dollars(decimal dollars) => dollars.ToString("$#,0.00", CultureInfo.InvariantCulture);
}
