using Estimator.Data.Prices;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;
using Estimator.Web.Catalogues;

namespace Estimator.Web.Tests.Catalogues;

public sealed class OwnPricesTests
{
    private static readonly LocalPrice Price = new()
    {
        Item = "nm_b-12-2",
        Supplier = "Two words, \"quoted\"",
        PackSize = 250,
        Price = Money.FromDollars(138.25m),
        AsOf = new DateOnly(2026, 11, 2),
        Note = "=1+1 sample of text",
    };

    [Fact]
    public void Over_FilesReadAgain_SameOffersAsThePartsInForce()
    {
        var laid = OwnPrices.Over(CatalogueShelf.BuiltIn(), [Price]);

        var again = PartsCatalogue.Read(laid.Files).Value;

        Assert.All(laid.Parts.Items, i => Assert.Equal(laid.Parts.OffersFor(i.Id), again.OffersFor(i.Id)));
    }

    [Fact]
    public void Over_NoteHoldsTheWordSample_PriceIsStillOnesOwn()
    {
        var offer = Assert.Single(OwnPrices.Over(CatalogueShelf.BuiltIn(), [Price]).Parts.OffersFor("nm_b-12-2"));

        Assert.Equal((138.25m, false), (offer.Price.ToDollars(), offer.IsSample));
    }

    [Fact]
    public void Over_NoPrices_IsTheBuiltInCatalogue()
    {
        var builtIn = CatalogueShelf.BuiltIn();

        Assert.Same(builtIn, OwnPrices.Over(builtIn, []));
    }

    [Theory]
    [InlineData("95", 95)]
    [InlineData("$95.50", 95.5)]
    [InlineData(" 1,095.5 ", 1095.5)]
    public void Parse_Price_ReadsDollars(string text, double dollars) => Assert.Equal((decimal)dollars, PriceText.Parse(text).Value.ToDollars());

    [Theory]
    [InlineData("")]
    [InlineData("-1")]
    [InlineData("1e3")]
    [InlineData("2000000")]
    [InlineData("=1+1")]
    [InlineData("\U0001F4A1")]
    public void Parse_NotAPrice_SaysWhatIsAccepted(string text) => Assert.Contains("a price in dollars is accepted", PriceText.Parse(text).Problem, StringComparison.Ordinal);
}
