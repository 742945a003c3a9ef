using Bunit;
using Estimator.Data.Stock;
using Estimator.Engine.Measures;
using Estimator.Web.Stock;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Web.Tests.Stock;

public sealed class StockPageTests : WebContext
{
    private StockStore Store => Services.GetRequiredService<StockStore>();

    [Fact]
    public async Task Put_CoilAndParts_StandOnTheShelf()
    {
        var page = Page();
        await page.Find(".item input").ChangeAsync(new() { Value = "NM-B cable 12/2 with ground" });
        await page.FindAll(".put .field input")[0].ChangeAsync(new() { Value = "88' 6\"" });
        await page.FindAll(".put .field input")[1].ChangeAsync(new() { Value = "van 2" });
        await page.Find(".put button.act").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Single(page.FindAll("[aria-label='Partial coils and reels'] tbody tr")));
        await page.Find(".item input").ChangeAsync(new() { Value = "breaker-1-20-plain" });
        await page.Find(".put .field input").ChangeAsync(new() { Value = "7" });
        await page.Find(".put button.act").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Single(page.FindAll("[aria-label='Parts'] tbody tr")));

        var shelf = await Store.LoadAsync(Token);
        Assert.Equal(Length.FromFeet(88.5m), Assert.Single(shelf.Pieces).Length);
        Assert.Equal(7, Assert.Single(shelf.Counts).Count);
        await page.Find("[aria-label='Left on van 2']").ChangeAsync(new() { Value = "40" });
        await page.Find("[aria-label^='Take One-pole']").ClickAsync(new());
        shelf = await Store.LoadAsync(Token);
        Assert.Equal((Length.FromFeet(40), 0), (shelf.Pieces[0].Length, shelf.Counts.Length));
    }

    [Theory]
    [InlineData("no such thing", "5", "the name of an item")]
    [InlineData("breaker-1-20-plain", "some", "a count from 0")]
    [InlineData("NM-B cable 12/2 with ground", "long", "long")]
    public async Task Put_WhatCannotBeRead_SaysWhatIsAccepted(string item, string amount, string problem)
    {
        var page = Page();
        await page.Find(".item input").ChangeAsync(new() { Value = item });
        await page.FindAll(".put .field input")[0].ChangeAsync(new() { Value = amount });
        await page.Find(".put button.act").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Contains(problem, page.Find(".problem").TextContent, StringComparison.Ordinal));
        Assert.Empty((await Store.LoadAsync(Token)).Counts);
    }

    private IRenderedComponent<StockPage> Page()
    {
        var page = Render<StockPage>();
        page.WaitForState(() => page.FindAll(".put").Count > 0);
        return page;
    }
}
