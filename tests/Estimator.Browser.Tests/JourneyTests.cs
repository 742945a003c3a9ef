using System.Globalization;
using ClosedXML.Excel;
using CsvHelper;
using Estimator.Engine;
using Estimator.Engine.Catalogue;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Purchase;
using Estimator.TestKit;
using Microsoft.Playwright;

namespace Estimator.Browser.Tests;

/// <summary>From nothing to a document, as each person goes: every journey ends on a figure that the engine works out again from the stored job.</summary>
public sealed class JourneyTests(RunningPages pages, ITestOutputHelper output)
{
    private const int ContractorSeconds = 5 * 60;
    private const int HomeownerSeconds = 10 * 60;
    private const int OfficeSeconds = 5 * 60;

    [Theory]
    [InlineData(Screen.Desk)]
    [InlineData(Screen.Phone)]
    public async Task Contractor_WithAFourRoomBasement_DownloadsItsBid(Screen screen)
    {
        await using var visit = await pages.OpenAsync(screen);
        var (page, hands) = (visit.Page, new Hands(visit.Page));
        await visit.GoAsync("/");
        await hands.ClickAsync(page.GetByRole(AriaRole.Button, new() { Name = "New job" }));
        await page.WaitForURLAsync("**/jobs/*/**");
        await visit.PriceAsync();
        await hands.ClickAsync(page.GetByRole(AriaRole.Link, new() { Name = "Rooms" }));
        await hands.ClickAsync(page.GetByLabel("Name and two sides"));
        foreach (var (room, number) in new[] { "Family 20 x 14", "Bedroom 11 x 13", "Bath 5 x 8", "Hall 4 x 16" }.Select((r, i) => (r, i)))
        {
            await hands.TypeAsync(room);
            await hands.PressAsync("Enter");
            await Assertions.Expect(page.Locator("tfoot")).ToContainTextAsync($"{number + 2} rooms");
        }

        await hands.ClickAsync(page.GetByRole(AriaRole.Link, new() { Name = "Bid" }));
        await hands.ClickAsync(page.GetByRole(AriaRole.Button, new() { Name = "Save revision 1" }));
        using var book = await DownloadAsync(page, hands, "Bid workbook");
        Assert.Equal((await AgainAsync(visit)).Bid.Price.Value, book.NamedRange("Price").Ranges.First().FirstCell().GetValue<decimal>());
        Done(visit, hands, ContractorSeconds);
    }

    [Theory]
    [InlineData(Screen.Desk)]
    [InlineData(Screen.Phone)]
    public async Task Homeowner_WithABasement_DownloadsABudget(Screen screen)
    {
        // Local prices count for all jobs of a server, so this journey has one of its own.
        using var folder = new PassingFolder();
        await using var server = await RunningServer.StartAsync(folder.Path);
        await using var visit = await pages.OpenAsync(server, screen);
        var (page, hands) = (visit.Page, new Hands(visit.Page));
        ILocator Button(string name) => page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });
        async Task NextAsync(string question)
        {
            await hands.ClickAsync(Button("Next"));
            await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync(question);
        }

        await visit.GoAsync("/");
        await hands.ClickAsync(page.GetByRole(AriaRole.Link, new() { Name = "Budget" }).First);
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("What is to be wired?");
        await NextAsync("Which rooms, and how big?");
        foreach (var room in new[] { "family room", "bedroom", "bath" })
        {
            await hands.ClickAsync(Button($"Add {room}"));
        }

        await hands.FillAsync(page.GetByLabel("Family room, width"), "18 6");
        await hands.FillAsync(page.GetByLabel("Family room, depth"), "14");
        await NextAsync("Are the walls open now?");
        await NextAsync("What do you want in each room?");
        await hands.ClickAsync(page.GetByLabel("Family room: recessed lights on a dimmer"));
        await NextAsync("Anything with a supply of its own?");
        await NextAsync("Where is the panel, and is there room in it?");
        await hands.ClickAsync(page.GetByText("I have read its label and counted the spaces"));
        await hands.FillAsync(page.GetByLabel("Of these free"), "8");
        await NextAsync("Who will do the work?");
        await NextAsync("What do these cost near you?");
        var prices = page.Locator("ul.asked input");
        await prices.First.WaitForAsync();
        var asked = await prices.CountAsync();
        Assert.Equal(5, asked);
        for (var i = 0; i < asked; i++)
        {
            await hands.FillAsync(prices.Nth(i), (19.95m + (20 * i)).ToString(CultureInfo.InvariantCulture));
        }

        await hands.ClickAsync(Button("Show my budget"));
        Assert.Empty(await visit.AccessibilityProblemsAsync());
        await hands.ClickAsync(Button("Save revision 1"));
        using var book = await DownloadAsync(page, hands, "Budget workbook");
        var likely = book.Worksheet("Budget").Column(1).CellsUsed().First(c => c.GetString() == "Likely").CellRight().GetValue<decimal>();
        Assert.Equal((await AgainAsync(visit)).Bid.Price.Value, likely);
        Done(visit, hands, HomeownerSeconds);
    }

    [Fact]
    public async Task OfficePerson_WithTwoOpenJobs_DownloadsTheirPurchaseLists()
    {
        await using var visit = await pages.OpenAsync(Screen.Desk);
        var (page, hands) = (visit.Page, new Hands(visit.Page));
        foreach (var sample in new[] { "Basement finish", "Two-storey house" })
        {
            await visit.GoAsync("/");
            await hands.ClickAsync(page.GetByRole(AriaRole.Button, new() { Name = sample }));
            await page.WaitForURLAsync("**/jobs/*/overview");
            await visit.PriceAsync();
            await hands.ClickAsync(page.GetByRole(AriaRole.Link, new() { Name = "Purchase" }).First);
            await hands.ClickAsync(page.GetByRole(AriaRole.Button, new() { Name = "Save revision 1" }));
            using var book = await DownloadAsync(page, hands, "Purchase workbook");
            var again = await AgainAsync(visit);
            Assert.Equal(again.Purchase.Total.Value, book.NamedRange("Material").Ranges.First().FirstCell().GetValue<decimal>());
            var csv = await File.ReadAllTextAsync(await FileAsync(page, hands, "Purchase list as CSV"), TestContext.Current.CancellationToken);
            Assert.Equal(again.Purchase.Lines.SelectMany(l => l.Packs).Sum(p => p.Count), Packs(csv).Sum());
        }

        Done(visit, hands, OfficeSeconds);
    }

    // One order for two jobs that were won: packs and coils are chosen over both.
    [Theory]
    [InlineData(Screen.Desk)]
    [InlineData(Screen.Phone)]
    public async Task OfficePerson_WithTwoSavedJobs_DownloadsOneOrder(Screen screen)
    {
        await using var visit = await pages.OpenAsync(screen);
        var (page, hands) = (visit.Page, new Hands(visit.Page));
        var (jobs, again) = (new List<string>(), new List<JobEstimate>());
        foreach (var sample in new[] { "Basement finish", "Two-storey house" })
        {
            jobs.Add(await visit.StartSampleAsync(sample));
            await page.GetByRole(AriaRole.Link, new() { Name = "Purchase" }).First.ClickAsync();
            await page.GetByRole(AriaRole.Button, new() { Name = "Save revision 1" }).ClickAsync();
            await page.GetByRole(AriaRole.Link, new() { Name = "Purchase workbook", Exact = true }).WaitForAsync();
            again.Add(await AgainAsync(visit));
        }

        await visit.GoAsync("/");
        await hands.ClickAsync(page.GetByRole(AriaRole.Link, new() { Name = "Buy", Exact = true }).First);
        var total = page.GetByRole(AriaRole.Table, new() { Name = "What to buy" }).Locator("tfoot button");
        foreach (var job in jobs)
        {
            await hands.ClickAsync(page.Locator($"input[data-job='{job}']"));
            await page.WaitForURLAsync($"**/order?*{job}*");
            await total.WaitForAsync();
        }

        var plan = Buying.Together([.. again.Select(e => (e.House.Job.Id, e.Takeoff))], Catalogues.Shipped);
        await Assertions.Expect(total).ToHaveTextAsync(plan.Total.Value.ToString("$#,0.00", CultureInfo.InvariantCulture));
        using var book = await DownloadAsync(page, hands, "Order workbook");
        var ordered = book.Worksheet("Order").RowsUsed().Where(r => r.Cell(1).GetString() == "☐").Select(r => (r.Cell(2).GetString(), (int)r.Cell(3).GetDouble(), (int)r.Cell(4).GetDouble()));
        Assert.Equal(plan.Lines.SelectMany(l => l.Packs.Select(p => (l.Description, p.Count, p.Offer.PackSize))).Order(), ordered.Order());
        var csv = await File.ReadAllTextAsync(await FileAsync(page, hands, "Order as CSV"), TestContext.Current.CancellationToken);
        Assert.Equal(plan.Lines.SelectMany(l => l.Packs).Sum(p => p.Count), Packs(csv).Sum());
        Assert.Empty(await visit.AccessibilityProblemsAsync());
        Done(visit, hands, OfficeSeconds);
    }

    // The engine works the saved revision out again from the file that the program hands out, prices included.
    private static async Task<JobEstimate> AgainAsync(Visit visit)
    {
        var id = new Uri(visit.Page.Url).Segments[2].TrimEnd('/');
        var text = await visit.Page.EvaluateAsync<string>("async address => await (await fetch(address)).text()", $"/jobs/{id}/revisions/1/job.json");
        var job = JobFile.Read(text, "job.json").Job;
        return JobEstimate.Compute(job, PartsCatalogue.Read(job.CatalogueSnapshot.ToDictionary(f => f.Key, f => f.Value.ToString())).Value);
    }

    private static List<decimal> Packs(string csv)
    {
        using var reader = new CsvReader(new StringReader(csv.TrimStart('\uFEFF')), CultureInfo.InvariantCulture);
        reader.Read();
        reader.ReadHeader();
        var packs = new List<decimal>();
        while (reader.Read())
        {
            packs.Add(reader.GetField<decimal?>("packs") ?? 0);
        }

        return packs;
    }

    private static async Task<string> FileAsync(IPage page, Hands hands, string title)
    {
        var link = page.GetByRole(AriaRole.Link, new() { Name = title, Exact = true });
        await link.WaitForAsync();
        var file = await page.RunAndWaitForDownloadAsync(() => hands.ClickAsync(link));
        return (await file.PathAsync())!;
    }

    private static async Task<XLWorkbook> DownloadAsync(IPage page, Hands hands, string title) =>
        new(new MemoryStream(await File.ReadAllBytesAsync(await FileAsync(page, hands, title))));

    private void Done(Visit visit, Hands hands, int limit)
    {
        output.WriteLine(hands.Told);
        Assert.Empty(visit.Faults);
        Assert.True(hands.Seconds <= limit, $"{hands.Told}, {limit} s are allowed");
    }
}
