using Bunit;
using Estimator.Data.Suppliers;
using Estimator.Engine.Measures;
using Estimator.Web.Catalogues;
using Estimator.Web.Suppliers;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Web.Tests.Suppliers;

public sealed class SupplierPageTests : WebContext
{
    private const string File = """
        Part No,Description,Net Price,UOM,UPC,Valid Until
        1001,"=NM-B 12/2, coil",412.50,coil of 250 ft,6291041500213,2031-06-30
        1002,Breaker 20,6.40,EA,,
        1003,Odd thing,cheap,EA,,
        1004,Armful,3,armful,,
        """;

    private SupplierStore Store => Services.GetRequiredService<SupplierStore>();

    private LocalPriceShelf Shelf => Services.GetRequiredService<LocalPriceShelf>();

    [Fact]
    public async Task Save_NewSupplier_StandsInTheListWithItsTerms()
    {
        var page = Render<SuppliersPage>();
        page.WaitForAssertion(() => Assert.Contains("will stand here", page.Markup, StringComparison.Ordinal));
        await page.Find(".page-head button.act").ClickAsync(new());
        await page.FindAll(".hand input")[0].ChangeAsync(new() { Value = "Corner <b>" });
        await page.FindAll(".hand input")[3].ChangeAsync(new() { Value = "35" });
        await page.FindAll(".hand input")[5].ChangeAsync(new() { Value = "150" });
        await page.Find(".hand button.act").ClickAsync(new());

        page.WaitForAssertion(() => Assert.Equal("Corner <b>", page.Find("tbody .who").TextContent));
        Assert.Contains("$35.00 a delivery, orders from $150.00", page.Find("tbody tr").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("tbody .who b"));
    }

    [Theory]
    [InlineData("", "", nameof(SupplierDraft.Name))]
    [InlineData("n", "much", nameof(SupplierDraft.Delivery))]
    public void Draft_FieldThatCannotBeRead_IsNamed(string name, string delivery, string field) =>
        Assert.Equal(field, Assert.Single(new SupplierDraft { Name = name, Delivery = delivery }.Read().Problems).Key);

    // By hand: 412.50 for a coil of 250 ft; the breaker is matched by hand and is known the next time; two rows can't be read.
    [Fact]
    public async Task PriceFile_MatchedLookedThroughAndWritten_PricesTheCatalogue()
    {
        var page = await PageAsync();
        page.WaitForState(() => page.FindAll(".match select").Count > 0);
        Assert.Equal("Net Price", page.FindAll(".match label").Single(l => l.TextContent.StartsWith("Price", StringComparison.Ordinal) && l.QuerySelector("span")!.TextContent == "Price").QuerySelector("select")!.GetAttribute("value"));
        await LookAsync(page);
        Assert.Contains("Not matched 2", Text(page, ".states"), StringComparison.Ordinal);
        Assert.Contains("Can't be read 2", Text(page, ".states"), StringComparison.Ordinal);
        Assert.Contains("=NM-B 12/2", page.Find("td.what").TextContent, StringComparison.Ordinal);

        await page.Find("[aria-label='Our item for row 2']").ChangeAsync(new() { Value = "NM-B cable 12/2 with ground" });
        await page.Find("[aria-label='Our item for row 3']").ChangeAsync(new() { Value = "breaker-1-20-plain" });
        Assert.Empty(Shelf.FromFiles);
        await page.Find(".write button.act").ClickAsync(new());

        page.WaitForAssertion(() => Assert.Contains("2 prices of march.csv written", page.Find(".said").TextContent, StringComparison.Ordinal));
        var offer = Assert.Single(Services.GetRequiredService<CatalogueShelf>().Current.Parts.OffersFor("nm_b-12-2"));
        Assert.Equal(("Counter", 250, 412.5m, "1001", "06291041500213", new DateOnly(2031, 6, 30)), (offer.Supplier, offer.PackSize, offer.Price.ToDollars(), offer.Number, offer.Gtin, offer.ExpiresOn!.Value));

        var history = Render<PriceHistory>(p => p.Add(h => h.Item, Services.GetRequiredService<CatalogueShelf>().Current.Parts.Find("nm_b-12-2")!).Add(h => h.Today, new DateOnly(2032, 1, 1)));
        history.WaitForAssertion(() => Assert.Contains("$412.50 for 250, Counter", string.Join(' ', history.Find("li").TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal));
        Assert.Contains("ended, march.csv, row 2", history.Find("small").TextContent, StringComparison.Ordinal);

        var again = await PageAsync();
        again.WaitForState(() => again.FindAll(".match select").Count > 0);
        Assert.Contains("as in this supplier's last file", again.Markup, StringComparison.Ordinal);
        await LookAsync(again);
        Assert.Contains("Unchanged 2", Text(again, ".states"), StringComparison.Ordinal);
        Assert.Contains("march.csv", again.FindAll("[aria-label='Files read so far'] tbody tr")[0].TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task PriceFile_WithoutAPriceColumn_SaysWhatToChoose()
    {
        var page = await PageAsync("Part No,Colour\n1,red\n");
        page.WaitForState(() => page.FindAll(".match select").Count > 0);
        Assert.Contains("No column is matched with the price", page.Find(".acts .off").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task PriceFile_ThatCannotBeRead_SaysWhyAndWritesNothing()
    {
        var page = await PageAsync("Part No,Price\n");
        page.WaitForAssertion(() => Assert.Contains("march.csv: The file holds no row below its headings", page.Find(".problem").TextContent, StringComparison.Ordinal));
    }

    // What a price was, in the revision's own catalogue text, stays when the next file comes.
    [Fact]
    public void Catalogue_WithPricesOfFiles_ReadsAgainWithTheirNumbersAndDays()
    {
        var price = new SupplierPrice
        {
            SupplierId = 1,
            Supplier = "A, \"B\"",
            Item = "breaker-1-20-plain",
            PackSize = 1,
            Price = Money.FromDollars(6.4m),
            QuotedOn = new DateOnly(2026, 3, 1),
            ExpiresOn = new DateOnly(2026, 4, 1),
            Number = "=1",
            Gtin = "06291041500213",
            Make = "Northlake",
            Series = "NL",
            Import = 1,
            FileRow = 2,
        };
        var laid = OwnPrices.Over(CatalogueShelf.BuiltIn(), [], [price]);
        var again = Engine.Catalogue.PartsCatalogue.Read(laid.Files).Value;
        Assert.Equal(price.ToOffer(), Assert.Single(again.OffersFor(price.Item)));
        Assert.True(again.OffersFor(price.Item).Single().IsExpired(new DateOnly(2026, 4, 2)));
        Assert.False(again.OffersFor(price.Item).Single().IsExpired(new DateOnly(2026, 4, 1)));
    }

    private static string Text(IRenderedComponent<PriceFilePage> page, string at) => string.Join(' ', page.Find(at).TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static async Task LookAsync(IRenderedComponent<PriceFilePage> page)
    {
        await page.Find(".acts button.act").ClickAsync(new());
        page.WaitForState(() => page.FindAll(".states").Count > 0);
    }

    private async Task<IRenderedComponent<PriceFilePage>> PageAsync(string file = File)
    {
        var supplier = (await Store.ListAsync(Token)).FirstOrDefault() ?? (await Store.SaveAsync(new Supplier { Name = "Counter" }, Token)).Stored;
        var page = Render<PriceFilePage>(p => p.Add(x => x.Id, supplier.Id));
        page.WaitForState(() => page.FindAll("input[type=file]").Count > 0);
        page.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText(file, "march.csv"));
        return page;
    }
}
