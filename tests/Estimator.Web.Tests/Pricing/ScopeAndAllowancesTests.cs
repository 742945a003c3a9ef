using Bunit;
using Estimator.Engine.House;
using Estimator.Web.Pricing;

namespace Estimator.Web.Tests.Pricing;

public sealed class ScopeAndAllowancesTests : WebContext
{
    [Fact]
    public async Task Sentence_InOtherWords_StandsInTheBidAndComesBackAsComposed()
    {
        await OpenSampleAsync();
        var page = Page();
        await Click(page, "Change the words: Not in the price");

        await page.InvokeAsync(() => page.Find("input[aria-label^='Not in the price: Patching']").ChangeAsync(new() { Value = "<b>No patching.</b>" }));
        await PricedAsync();
        Assert.Contains("<b>No patching.</b>", Desk.Priced!.Estimate.Bid.Exclusions);
        page.WaitForAssertion(() => Assert.Equal("<b>No patching.</b>", page.Find("input[aria-label='Not in the price: <b>No patching.</b>']").GetAttribute("value")));

        await Click(page, "As composed: Patching, painting, trenching, and charges of the utility.");
        await PricedAsync();
        Assert.Contains(Desk.Priced!.Estimate.Bid.Exclusions, e => e.StartsWith("Patching", StringComparison.Ordinal));
        Assert.Empty(Desk.Job.Bid.Scope);
    }

    [Fact]
    public async Task Sentence_LeftOutOrAdded_IsNotOrIsInTheBid()
    {
        await OpenSampleAsync();
        var page = Page();
        await Click(page, "Change the words: In the price");
        await Click(page, "Leave out: Cable, boxes, devices and plates, breakers, connectors and fasteners as listed.");
        await page.InvokeAsync(() => page.Find("input[aria-label='One more sentence: In the price']").ChangeAsync(new() { Value = "Two years of warranty." }));
        await PricedAsync();

        Assert.DoesNotContain(Desk.Priced!.Estimate.Bid.Inclusions, l => l.StartsWith("Cable, boxes", StringComparison.Ordinal));
        Assert.Contains("Two years of warranty.", Desk.Priced.Estimate.Bid.Inclusions);
    }

    [Fact]
    public async Task Allowance_Added_IsInThePrice()
    {
        await OpenSampleAsync();
        var before = Desk.Priced!.Estimate.Bid.DirectTotal.Value;
        var page = Page();
        await page.InvokeAsync(() => page.FindAll(".allowances button").First(b => b.TextContent == "Add allowance").ClickAsync(new()));
        await page.InvokeAsync(() => page.FindAll(".allowances input")[1].ChangeAsync(new() { Value = "$450" }));
        await PricedAsync();
        Assert.Equal(before + 450m, Desk.Priced!.Estimate.Bid.DirectTotal.Value);

        await page.InvokeAsync(() => page.FindAll(".allowances input")[1].ChangeAsync(new() { Value = "a lot" }));
        Assert.Contains("a lot", page.Find(".allowances [role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Equal(450m, Desk.Job.Bid.Allowances[0].Amount.ToDollars());
    }

    [Fact]
    public async Task SalesTax_ChargedOn_StandsAsALineBeforeThePrice()
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Tax", j => j with { Bid = j.Bid with { MaterialTaxPercent = Engine.Measures.Percent.FromHundredths(8) } }, Token);
        var page = Page();
        await page.InvokeAsync(() => page.FindAll("label.choice select")[^1].ChangeAsync(new() { Value = nameof(SalesTaxOn.MaterialCharged) }));
        await PricedAsync();
        page.WaitForAssertion(() => Assert.Contains(page.FindAll("table.build th"), h => h.TextContent.StartsWith("Price before sales tax", StringComparison.Ordinal)));
        Assert.Equal(SalesTaxOn.MaterialCharged, Desk.Job.Bid.SalesTaxOn);
    }

    private IRenderedComponent<BidPage> Page() => Render<BidPage>(p => p.Add(b => b.JobId, Desk.Job.Id).AddCascadingValue(Desk.Priced!.Source));

    private static Task Click(IRenderedComponent<BidPage> page, string label) => page.InvokeAsync(() => page.FindAll("button").First(b => b.GetAttribute("aria-label") == label).ClickAsync(new()));
}
