using AngleSharp.Dom;
using Bunit;
using Estimator.Data.Jobs;
using Estimator.Engine;
using Estimator.Engine.House;
using Estimator.Web.Budget;
using Estimator.Web.Catalogues;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Web.Tests.Budget;

public sealed class BudgetPageTests : WebContext
{
    private JobStore Store => Services.GetRequiredService<JobStore>();

    private static BudgetAnswers Basement => new BudgetAnswers().Add(RoomKind.Family, "Family room").Add(RoomKind.Bathroom, "Bath");

    [Fact]
    public async Task Next_FirstQuestion_StoresAJobAndGoesToTheRooms()
    {
        var page = Render<BudgetPage>();

        await page.InvokeAsync(() => page.Find("button.act").ClickAsync(new()));

        var job = Assert.Single(await Store.ListAsync(JobFilter.All, Token));
        Assert.Equal("Basement budget", job.Name);
        Assert.EndsWith($"/budget/{job.Id}?q=2", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AddRoom_IsInTheStoreAtOnce()
    {
        var (page, id) = await OpenAsync(new BudgetAnswers(), BudgetStep.Rooms);

        await page.InvokeAsync(() => Button(page, "Add bedroom").ClickAsync(new()));

        page.WaitForAssertion(() => Assert.Contains("Bedroom", page.Find(".rooms input").GetAttribute("value"), StringComparison.Ordinal));
        var stored = await Store.LoadAsync(id, Token);
        Assert.Contains(stored!.Job.Levels[0].Rooms, r => r is { Kind: RoomKind.Bedroom, Name: "Bedroom" });
    }

    [Theory]
    [InlineData("soft")]
    [InlineData("0")]
    [InlineData("900'")]
    public async Task RoomSize_NotASize_SaysWhatIsAcceptedAndKeepsTheOld(string typed)
    {
        var (page, id) = await OpenAsync(Basement, BudgetStep.Rooms);

        await page.Find("input[aria-label='Family room, width']").ChangeAsync(new() { Value = typed });

        Assert.Contains("accepted", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Equal(20, (await Store.LoadAsync(id, Token))!.Job.Levels[0].Rooms[0].Size!.Width.ToFeet());
    }

    // A bare number is feet, as people say it of rooms.
    [Theory]
    [InlineData("22", 22)]
    [InlineData("12.5", 12.5)]
    [InlineData("12' 6\"", 12.5)]
    public async Task RoomSize_AsPeopleSayIt_IsKept(string typed, double feet)
    {
        var (page, id) = await OpenAsync(Basement, BudgetStep.Rooms);

        await page.Find("input[aria-label='Family room, width']").ChangeAsync(new() { Value = typed });

        Assert.Equal((decimal)feet, (await Store.LoadAsync(id, Token))!.Job.Levels[0].Rooms[0].Size!.Width.ToFeet());
    }

    [Fact]
    public async Task Next_NoRooms_StaysAndSaysSo()
    {
        var (page, _) = await OpenAsync(new BudgetAnswers(), BudgetStep.Rooms);

        await page.InvokeAsync(() => page.Find("button.big").ClickAsync(new()));

        Assert.Contains("no room yet", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Range_NumbersAreThoseOfTheEngineForTheStoredJob()
    {
        var (page, id) = await OpenAsync(Basement, BudgetStep.Done);
        await PricedAsync();

        var stored = (await Store.LoadAsync(id, Token))!.Job;
        var bid = JobEstimate.Compute(stored, CatalogueShelf.BuiltIn().Parts, Desk.Priced!.Estimate.Depth).Bid;
        page.WaitForAssertion(() => Assert.Equal(
            new[] { bid.Low, bid.Price, bid.High }.Select(f => American.WholeDollars(f.Value)), page.FindAll(".dim .n").Select(n => n.TextContent)));
        Assert.Contains($"/jobs/{id}/overview", page.Find("a.big").GetAttribute("href"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task MustAndChoice_PartsAreThoseOfTheEngineForBothJobs()
    {
        var wished = Basement.With("R1", r => r with { RecessedLights = true });
        var (page, id) = await OpenAsync(wished, BudgetStep.Walls);
        var priced = await PricedAsync();

        var least = JobEstimate.Compute(BudgetJob.Make(wished.Least, priced.Job), CatalogueShelf.BuiltIn().Parts, priced.Estimate.Depth).Bid.Price.Value;
        var full = priced.Estimate.Bid.Price.Value;
        page.WaitForAssertion(() => Assert.Equal([American.WholeDollars(least), American.WholeDollars(full - least)], page.FindAll(".split .n").Select(n => n.TextContent)), TimeSpan.FromSeconds(20));
        Assert.True(full > least);
        Assert.NotEmpty(id);
    }

    [Fact]
    public async Task Prices_OneGiven_StoredAndPricedAgainAndCounted()
    {
        var (page, _) = await OpenAsync(Basement, BudgetStep.Prices);
        var before = await PricedAsync();
        page.WaitForState(() => page.FindAll(".asked li").Count == BudgetTable.LocalPrices, TimeSpan.FromSeconds(20));
        var ask = LocalAsk.Of(before, BudgetTable.LocalPrices)[0];

        await page.Find(".asked input").ChangeAsync(new() { Value = "999.00" });
        page.WaitForState(() => Desk.Priced is { } priced && priced.Catalogue != before.Catalogue, TimeSpan.FromSeconds(20));

        Assert.Equal(999m, Services.GetRequiredService<LocalPriceShelf>().Of(ask.Item, ask.Offer.PackSize)!.Price.ToDollars());
        Assert.True(Desk.Priced!.Estimate.Bid.Price.Value > before.Estimate.Bid.Price.Value);
        page.WaitForAssertion(() => Assert.Contains("1 of 5 local prices", page.Find(".range .note").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Prices_NotAPrice_SaysWhatIsAcceptedAndStoresNothing()
    {
        var (page, _) = await OpenAsync(Basement, BudgetStep.Prices);
        await PricedAsync();
        page.WaitForState(() => page.FindAll(".asked li").Count > 0, TimeSpan.FromSeconds(20));

        await page.Find(".asked input").ChangeAsync(new() { Value = "=1+1" });

        Assert.Contains("a price in dollars is accepted", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Empty(Services.GetRequiredService<LocalPriceShelf>().Prices);
    }

    [Fact]
    public async Task Open_JobOfTheFrame_LeavesItAloneAndPointsToIt()
    {
        var stored = await Store.CreateAsync(JobStarts.Sample("basement-finish"), JobDesk.Me, Token);

        var page = Render<BudgetPage>(p => p.Add(b => b.JobId, stored.Job.Id));

        page.WaitForAssertion(() => Assert.Contains("/overview", page.Find("a").GetAttribute("href"), StringComparison.Ordinal));
        Assert.Empty(page.FindAll("fieldset"));
    }

    [Theory]
    [InlineData(BudgetStep.Walls, "lead or asbestos")]
    [InlineData(BudgetStep.Panel, "stay live with the main off")]
    public async Task Question_ThatCanHurt_HasItsCaution(BudgetStep step, string words)
    {
        var (page, _) = await OpenAsync(Basement, step);

        Assert.Contains(page.FindAll(".caution"), c => c.TextContent.Contains(words, StringComparison.Ordinal));
    }

    // Found and pressed in one turn: a price that arrives between the two draws the page anew.
    private static IElement Button(IRenderedComponent<BudgetPage> page, string words) => page.FindAll("button").Single(b => b.TextContent.Trim() == words);

    private async Task<(IRenderedComponent<BudgetPage> Page, string Id)> OpenAsync(BudgetAnswers answers, BudgetStep step)
    {
        var stored = await Store.CreateAsync(BudgetJob.Start(answers), JobDesk.Me, Token);
        Services.GetRequiredService<NavigationManager>().NavigateTo($"/budget/{stored.Job.Id}?q={(int)step}");
        var page = Render<BudgetPage>(p => p.Add(b => b.JobId, stored.Job.Id));
        page.WaitForState(() => page.FindAll(".ask h1").Count == 1);
        return (page, stored.Job.Id);
    }
}
