using Bunit;
using Estimator.Web.Jobs;
using Estimator.Web.Pricing;

namespace Estimator.Web.Tests.Pricing;

public sealed class BidPageTests : WebContext
{
    [Fact]
    public async Task Field_NewOverhead_IsStoredAndPriced()
    {
        var before = await OpenSampleAsync();
        var page = Page(before);

        Input(page, "Overhead").Change("31");

        page.WaitForAssertion(() => Assert.Equal(31, Desk.Job.Bid.OverheadPercent?.ToHundredths()));
        var after = await PricedAsync();
        Assert.True(after.Estimate.Bid.Price.Value > before.Estimate.Bid.Price.Value);
        Assert.Equal("Overhead: 31 % of direct cost", Desk.UndoTitle);
    }

    [Fact]
    public async Task Field_Nonsense_StaysWithASentenceAndStoresNothing()
    {
        var page = Page(await OpenSampleAsync());
        var version = Desk.Version;

        Input(page, "Overhead").Change("=1+1");

        page.WaitForAssertion(() => Assert.Contains("Found “=1+1”", page.Markup, StringComparison.Ordinal));
        Assert.Equal(version, Desk.Version);
        Assert.Equal("=1+1", Input(page, "Overhead").GetAttribute("value"));
    }

    [Fact]
    public async Task Documents_BeforeAndAfterSaving_AreOfTheSavedRevisionOnly()
    {
        var page = Page(await OpenSampleAsync());
        Assert.Contains("provisional", page.Find(".page-head p").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("a[href*='/revisions/']"));

        page.Find(".page-head button").Click();

        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll("a[href$='/revisions/1/bid.xlsx']")), TimeSpan.FromSeconds(30));
        await Desk.EditAsync("Permit: 500 dollars", j => j with { Bid = j.Bid with { Permit = Engine.Measures.Money.FromDollars(500) } }, Token);
        page.WaitForAssertion(() => Assert.Contains("1 edit since is not in them", page.Find(".papers").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Scope_ItemNobodyOffers_IsToldToBeMissingFromThePrice()
    {
        var priced = await OpenSampleAsync();
        var plan = priced.Estimate.Purchase;
        var bare = priced with { Estimate = priced.Estimate with { Purchase = plan with { Lines = [plan.Lines[0] with { Cost = null }, .. plan.Lines[1..]] } } };

        var scope = Render<BidScopeList>(p => p.Add(s => s.Priced, bare).AddCascadingValue(priced.Source));

        Assert.Contains(plan.Lines[0].Description, scope.Find(".unpriced").TextContent, StringComparison.Ordinal);
        Assert.Contains("No price yet, so not in this bid", scope.Find(".unpriced h2").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<img src=x onerror=alert(1)>")]
    [InlineData("=1+1")]
    [InlineData("🔌 @SUM(A1)")]
    public async Task Scope_TextOfTheUser_StaysText(string text)
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Unknown", j => j with { Unknowns = [j.Unknowns[0] with { Text = text }] }, Token);
        var priced = await PricedAsync();

        var scope = Render<BidScopeList>(p => p.Add(s => s.Priced, priced).AddCascadingValue(priced.Source));

        Assert.Contains(text, scope.Find(".scope").TextContent, StringComparison.Ordinal);
        Assert.Empty(scope.FindAll("img"));
    }

    private IRenderedComponent<BidPage> Page(PricedJob priced) => Render<BidPage>(p => p.Add(b => b.JobId, Desk.Job.Id).AddCascadingValue(priced.Source));

    private static AngleSharp.Dom.IElement Input(IRenderedComponent<BidPage> page, string label) =>
        page.FindAll(".rate").Single(r => r.QuerySelector("label")?.TextContent == label).QuerySelector("input")!;
}
