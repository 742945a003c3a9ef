using System.Globalization;
using System.IO.Compression;
using Microsoft.Playwright;

namespace Estimator.Browser.Tests;

/// <summary>From nothing to a document: what each person does first.</summary>
public sealed class BlankStartTests(RunningPages pages)
{
    // A contractor names rooms by keyboard alone, saves a revision and takes the bid workbook away.
    [Fact]
    public async Task Contractor_FromABlankJob_DownloadsABidOfThatPrice()
    {
        await using var visit = await pages.OpenAsync(Screen.Desk);
        var page = visit.Page;
        await visit.GoAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "New job" }).ClickAsync();
        await page.WaitForURLAsync("**/jobs/*/**");
        await visit.PriceAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Rooms" }).ClickAsync();
        await page.GetByLabel("Name and two sides").ClickAsync();
        foreach (var (room, number) in new[] { "Bedroom 11 x 13", "Bath 5 x 8", "Kitchen 12 x 14", "Hall 4 x 16" }.Select((r, i) => (r, i)))
        {
            await page.Keyboard.TypeAsync(room);
            await page.Keyboard.PressAsync("Enter");
            await Assertions.Expect(page.Locator("tfoot")).ToContainTextAsync($"{number + 2} rooms");
        }

        Assert.Equal(["Bedroom", "Bath", "Kitchen", "Hall"], (await page.Locator("tbody .roomname b").AllInnerTextsAsync()).TakeLast(4));
        await page.GetByRole(AriaRole.Link, new() { Name = "Bid" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Save revision 1" }).ClickAsync();
        var link = page.GetByRole(AriaRole.Link, new() { Name = "Bid workbook" });
        var file = await page.RunAndWaitForDownloadAsync(() => link.ClickAsync());
        var price = await visit.PriceAsync();
        using var book = await ZipFile.OpenReadAsync((await file.PathAsync())!, TestContext.Current.CancellationToken);
        Assert.Contains($">{price.ToString(CultureInfo.InvariantCulture)}<", string.Concat(book.Entries.Where(e => e.FullName.Contains("sheet", StringComparison.Ordinal)).Select(Text)), StringComparison.Ordinal);
        Assert.Empty(visit.Faults);
    }

    // A homeowner answers plain questions on a phone and sees a range.
    [Fact]
    public async Task Homeowner_FirstQuestionOnAPhone_LeadsToTheNext()
    {
        await using var visit = await pages.OpenAsync(Screen.Phone);
        await visit.GoAsync("/budget");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Next" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("h1")).ToContainTextAsync("Which rooms");
        Assert.Empty(await visit.AccessibilityProblemsAsync());
        Assert.Empty(visit.Faults);
    }

    private static string Text(ZipArchiveEntry entry)
    {
        using var reader = new StreamReader(entry.Open());
        return reader.ReadToEnd();
    }
}
