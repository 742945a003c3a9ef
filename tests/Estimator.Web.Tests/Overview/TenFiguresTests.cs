using Bunit;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Wiring.Routing;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;
using Estimator.Web.Overview;

namespace Estimator.Web.Tests.Overview;

/// <summary>The figures that an estimator looks at first. Their order and their bands: common practice, no source.</summary>
public sealed class TenFiguresTests : WebContext
{
    [Theory]
    [InlineData("basement-finish")]
    [InlineData("two-storey-house")]
    public async Task Render_Sample_GivesTheTenInTheirOrder(string sample)
    {
        var priced = await OpenSampleAsync(sample);
        var page = Draw(priced);
        Assert.Equal(
            ["Home runs", "Boxes", "Cable an opening", "Hours an opening", "AFCI, GFCI, dual-function", "Labor share of direct cost", "Profit", "Tax and permit", "Price an opening", "One more receptacle"],
            page.FindAll("li.fig h3").Select(h => h.TextContent));
        var bid = priced.Estimate.Bid;
        Assert.Equal(American.Fixed(bid.PaidHours.Value / priced.Estimate.Takeoff.Openings.Value, 2), Value(page, 4));
        Assert.Equal(American.WholeDollars(bid.PricePerOpening.Value), Value(page, 9));
    }

    // The sample's outlets stand close together, so its cable lies below the band and the page says how long its runs are.
    [Fact]
    public async Task Cable_BelowItsBand_IsExplainedByTheRunsOfTheJob()
    {
        var priced = await OpenSampleAsync();
        var home = priced.Estimate.Wiring.Runs.Where(r => r.Role is RunRole.HomeRun).Average(r => r.Total.Value / Length.FromFeet(1).ToNanometres());
        Assert.Contains($"Here a home run is {American.Number(home)} ft on average", Reason(Draw(priced), 3), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(TravelBy.ProductiveShare, "Drive and set-up time is in the productive share of paid hours.")]
    [InlineData(TravelBy.Hours, "Drive and set-up time are counted as hours.")]
    public async Task Travel_IsToldOnce(TravelBy travel, string sentence)
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Travel", j => j with { Bid = j.Bid with { Travel = travel } }, Token);
        var priced = await PricedAsync();
        Assert.EndsWith(sentence, Reason(Draw(priced), 8), StringComparison.Ordinal);
        Assert.Equal(travel is TravelBy.Hours, priced.Estimate.Labor.Lines.Any(l => l.ItemId == "mobilization"));
    }

    private IRenderedComponent<TenFigures> Draw(PricedJob priced) => Render<TenFigures>(p => p.Add(t => t.Priced, priced).AddCascadingValue(priced.Source));

    private static string Value(IRenderedComponent<TenFigures> page, int number) => page.FindAll("li.fig")[number - 1].QuerySelector(".v .n")!.TextContent;

    private static string Reason(IRenderedComponent<TenFigures> page, int number) => page.FindAll("li.fig")[number - 1].QuerySelector("p")!.TextContent;
}
