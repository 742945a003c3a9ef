using Bunit;
using Estimator.Web.Figures;
using Estimator.Web.Pricing;

namespace Estimator.Web.Tests.Pricing;

public sealed class BuildUpTests : WebContext
{
    [Fact]
    public async Task Render_Sample_PrintsTheEnginesAmountsAndTotals()
    {
        var priced = await OpenSampleAsync();
        var bid = priced.Estimate.Bid;

        var drawn = Render<BuildUp>(p => p.Add(b => b.Priced, priced).AddCascadingValue(priced.Source));

        var printed = drawn.FindAll("tbody tr").ToDictionary(r => r.QuerySelector("th")!.FirstChild!.TextContent, r => r.QuerySelector("td.r .n")!.TextContent);
        Assert.Equal(American.Dollars(bid.Price.Value), printed["Price"]);
        Assert.Equal(American.Dollars(bid.DirectTotal.Value), printed["Direct cost"]);
        Assert.All(bid.DirectCost.Concat(bid.Additions).Where(l => l.Amount.Value != 0), l => Assert.Equal(American.Dollars(l.Amount.Value), printed[l.Label]));
        Assert.Equal(bid.Price.Value - bid.Additions.Where(l => l.Id is "profit" or "rounding").Sum(l => l.Amount.Value), decimal.Parse(printed["All cost"].TrimStart('$'), American.Culture));
    }

    [Fact]
    public async Task Render_Profit_IsToldAsMarkupAndAsMargin()
    {
        var priced = await OpenSampleAsync();

        var both = Render<BuildUp>(p => p.Add(b => b.Priced, priced).AddCascadingValue(priced.Source)).Find(".both").TextContent;

        Assert.Contains($"{American.Number(priced.Estimate.Bid.MarkupPercent.Value, 1)}% on cost", both, StringComparison.Ordinal);
        Assert.Contains($"{American.Number(priced.Estimate.Bid.MarginPercent.Value, 1)}% of the price", both, StringComparison.Ordinal);
    }
}
