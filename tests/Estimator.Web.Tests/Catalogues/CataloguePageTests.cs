using Bunit;
using Estimator.Data.Prices;
using Estimator.Engine.Measures;
using Estimator.Web.Catalogues;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Web.Tests.Catalogues;

public sealed class CataloguePageTests : WebContext
{
    private static readonly LocalPrice Own = new() { Item = "nm_b-12-2", Supplier = "Corner store", PackSize = 250, Price = Money.FromDollars(138), AsOf = new DateOnly(2020, 1, 2) };

    private LocalPriceShelf Shelf => Services.GetRequiredService<LocalPriceShelf>();

    [Fact]
    public async Task Search_TwoWordsInAnyOrder_ShowsTheItemsThatHoldBoth()
    {
        var page = Render<CataloguePage>();

        await page.Find(".find input").InputAsync(new() { Value = "12/2 nm-b" });

        page.WaitForAssertion(() => Assert.Equal("NM-B cable 12/2 with ground", Assert.Single(page.FindAll("tbody tr b")).TextContent));
    }

    [Fact]
    public async Task Save_PriceOfOnesOwn_StoredAndOpenJobsPricedAgain()
    {
        var before = await OpenSampleAsync();
        Services.GetRequiredService<CatalogueShelf>().Changed += Desk.Reprice;
        var page = Render<CataloguePage>();
        await page.Find(".find input").InputAsync(new() { Value = "nm-b 12/2" });
        page.WaitForState(() => page.FindAll("tbody tr").Count == 1);

        await page.Find("tbody .lk").ClickAsync(new());
        await page.FindAll(".hand input")[0].ChangeAsync(new() { Value = "Corner store" });
        await page.FindAll(".hand input")[1].ChangeAsync(new() { Value = "250" });
        await page.FindAll(".hand input")[2].ChangeAsync(new() { Value = "900" });
        await page.Find(".hand button.act").ClickAsync(new());

        Assert.Equal(("Corner store", 250, 900m), Shelf.Prices.Select(p => (p.Supplier, p.PackSize, p.Price.ToDollars())).Single());
        Assert.True((await PricedAsync()).Estimate.Bid.Price.Value > before.Estimate.Bid.Price.Value);
    }

    [Fact]
    public async Task Remove_OnlyPrice_FallsBackOnTheSample()
    {
        await Shelf.SaveAsync(Own, Token);
        var page = Render<CataloguePage>();
        await page.FindAll(".states button")[1].ClickAsync(new());
        Assert.Contains("days old", page.Find("tbody tr").TextContent, StringComparison.Ordinal);

        await page.Find("tbody .lk").ClickAsync(new());
        await page.Find("[aria-label='Remove the price of Corner store']").ClickAsync(new());

        Assert.Empty(Shelf.Prices);
        Assert.All(Services.GetRequiredService<CatalogueShelf>().Current.Parts.OffersFor("nm_b-12-2"), o => Assert.True(o.IsSample));
    }

    [Theory]
    [InlineData("", "250", "9", "2026-01-02", nameof(PriceDraft.Supplier))]
    [InlineData("Store", "0", "9", "2026-01-02", nameof(PriceDraft.Pack))]
    [InlineData("Store", "250", "cheap", "2026-01-02", nameof(PriceDraft.Price))]
    [InlineData("Store", "250", "9", "2031-01-02", nameof(PriceDraft.AsOf))]
    public void Draft_FieldThatCannotBeRead_IsNamedAndNothingIsMade(string supplier, string pack, string price, string day, string field)
    {
        var draft = new PriceDraft { Item = "nm_b-12-2", Supplier = supplier, Pack = pack, Price = price, AsOf = day };

        var (made, problems) = draft.Read(new DateOnly(2026, 11, 25));

        Assert.Null(made);
        Assert.Equal(field, Assert.Single(problems).Key);
    }

    [Fact]
    public async Task Start_PricesOfAnEarlierRun_AreInForce()
    {
        await Shelf.SaveAsync(Own, Token);
        var later = new CatalogueShelf();
        using var shelf = new LocalPriceShelf(Services.GetRequiredService<IServiceScopeFactory>(), later);

        await shelf.StartAsync(Token);

        Assert.Equal(138m, Assert.Single(later.Current.Parts.OffersFor("nm_b-12-2")).Price.ToDollars());
    }
}
