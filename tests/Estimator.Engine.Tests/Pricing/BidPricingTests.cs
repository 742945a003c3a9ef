using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Pricing;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Pricing;

public sealed class BidPricingTests
{
    // Markup to margin: contractor finance guide page 'overhead and markup'.
    [Theory]
    [InlineData(10, 9.1)]
    [InlineData(15, 13.0)]
    [InlineData(20, 16.7)]
    [InlineData(25, 20.0)]
    [InlineData(30, 23.1)]
    [InlineData(35, 25.9)]
    [InlineData(40, 28.6)]
    [InlineData(50, 33.3)]
    public void Margin_OfMarkup_IsThePublishedOne(int markup, double margin)
    {
        var page = new PageWriter(0);
        var (cost, percent) = (page.Given("c", "Cost", 1000m, Unit.Dollars), page.Given("m", "Markup", markup, Unit.Percent));
        var profit = Markup.ProfitFromMarkup(page, cost, percent);
        var price = page.Compute(Operation.Sum, "p", "Price", Unit.Dollars, cost, profit);
        Assert.Equal(margin, (double)Markup.Share(page, "Margin", profit, price).Value, 0.05);
    }

    // By hand: (30.38 + 20.51) / 2 = 25.445; with 43% burden 36.38635; over 85% productive 42.80747, to the cent 42.81.
    [Fact]
    public void HourCost_OfTheDefaults_IsWorkedByHand() => Assert.Equal(42.81m, Sample().Bid.HourCost.Value);

    [Fact]
    public void Bid_Lines_AddUpToThePrice()
    {
        var bid = Sample().Bid;
        Assert.Equal(bid.DirectTotal.Value, bid.DirectCost.Sum(l => l.Amount.Value));
        Assert.Equal(bid.Price.Value, bid.DirectTotal.Value + bid.Additions.Sum(l => l.Amount.Value));
        Assert.All(bid.DirectCost.Concat(bid.Additions), l => Assert.Equal(decimal.Round(l.Amount.Value, 2, MidpointRounding.AwayFromZero), l.Amount.Value));
        Assert.True(bid.Low.Value < bid.Price.Value && bid.Price.Value < bid.High.Value);
        Assert.Equal(0m, bid.Price.Value % 5m);
    }

    [Fact]
    public void Bid_Unknowns_BecomeExclusionsAllowancesAndAWiderRange()
    {
        var job = Job();
        var unknown = job with { Unknowns = [new Unknown { Id = "u", Topic = UnknownTopic.WallType, Text = "what the walls are", Allowance = Money.FromDollars(250) }] };
        var (before, after) = (SmallJobs.Estimate(job).Bid, SmallJobs.Estimate(unknown).Bid);
        Assert.Contains(after.DirectCost, l => l.Id == "allowance-u" && l.Amount.Value == 250m);
        Assert.Contains(after.Exclusions, e => e.Contains("what the walls are", StringComparison.Ordinal));
        Assert.True(after.High.Value / after.Price.Value > before.High.Value / before.Price.Value);
    }

    [Fact]
    public void Estimate_OfEachStage_ExplainsItself()
    {
        var estimate = Sample();
        Assert.Empty(ExplanationCheck.Problems(estimate.Book));
        Assert.Equal(estimate.Labor.Total.Value, estimate.Labor.Lines.Sum(l => l.Hours.Value));
        Assert.Equal(estimate.Purchase.Total.Value, estimate.Purchase.Lines.Sum(l => l.Cost?.Value.ToDollars() ?? 0));
        Assert.All(estimate.Takeoff.Lines.Where(l => l.Category == "cable"), l => Assert.Equal(
            (double)estimate.Wiring.Runs.Where(r => r.Cable.ItemId == l.ItemId).Sum(r => r.Total.AsLength().Value.ToFeet()), (double)l.Quantity.Value, 1e-6));
    }

    private static Job Job() => SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 5), (DeviceKind.CeilingLight, 2), (DeviceKind.SinglePoleSwitch, 1), (DeviceKind.SmokeAlarm, 1));

    private static JobEstimate Sample() => SmallJobs.Estimate(Job());
}
