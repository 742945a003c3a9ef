using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Pricing;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Engine.Tests.Pricing.Ranges;

public sealed class PriceRangeTests
{
    public static TheoryData<UnknownTopic> Topics => [.. Enum.GetValues<UnknownTopic>()];

    [Fact]
    public void Range_OfASmallJob_HoldsThePriceAndCountsEveryDraw()
    {
        var bid = SmallJobs.Estimate(Job()).Bid;
        Assert.True(bid.Low.Value < bid.Price.Value && bid.Price.Value < bid.High.Value);
        Assert.Equal(bid.Range.Draws.Value, bid.Range.Bins.Sum(b => b.Draws));
        Assert.InRange(bid.Range.Bins.Length, 5, 20);
        Assert.InRange(bid.Range.Middle.Value, bid.Low.Value, bid.High.Value);
        Assert.All(bid.Range.Bins.Zip(bid.Range.Bins.Skip(1)), pair => Assert.Equal(pair.First.To, pair.Second.From));
    }

    // The share of draws to the price by the histogram, as far as its columns tell it.
    [Fact]
    public void WithinPrice_OfASmallJob_AgreesWithTheHistogram()
    {
        var bid = SmallJobs.Estimate(Job()).Bid;
        decimal Share(Func<Estimator.Engine.Pricing.Ranges.RangeBin, bool> of) => bid.Range.Bins.Where(of).Sum(b => b.Draws) * 100m / bid.Range.Draws.Value;
        Assert.InRange(bid.Range.WithinPrice.Value, Share(b => b.To <= bid.Price.Value), Share(b => b.From <= bid.Price.Value));
    }

    [Theory]
    [MemberData(nameof(Topics))]
    public void Range_AnUnknownMore_IsWiderAtTheHighEnd(UnknownTopic topic)
    {
        var (before, after) = (SmallJobs.Estimate(Job()).Bid, SmallJobs.Estimate(Job() with { Unknowns = [Unknown("a", topic)] }).Bid);
        var twice = SmallJobs.Estimate(Job() with { Unknowns = [Unknown("a", topic), Unknown("b", topic)] }).Bid;
        Assert.Equal(before.Price.Value, after.Price.Value);
        Assert.True(Width(after) > Width(before) && Width(twice) > Width(after));
        Assert.True(after.Range.AbovePercent.Value > before.Range.AbovePercent.Value);
        Assert.Contains(after.Range.Factors, f => f.Key.StartsWith("unknown_", StringComparison.Ordinal) && f.More.Value > 0 && f.Less.Value == 0);
    }

    [Fact]
    public void Range_AssumedLayoutOrPanelMake_IsWider()
    {
        var (job, plain) = (Job(), SmallJobs.Estimate(Job()).Bid);
        var arranged = SmallJobs.Estimate(job.With(r => r with { At = null })).Bid;
        var make = SmallJobs.Estimate(job with { Panels = [.. job.Panels.Select(p => p with { Make = null })] }).Bid;
        Assert.True(Width(arranged) > Width(plain));
        Assert.True(Width(make) > Width(plain));
    }

    [Fact]
    public void Range_OfFinishedWalls_IsWider() =>
        Assert.True(Width(SmallJobs.Estimate(Job().With(r => r with { Walls = WallState.Finished })).Bid) > Width(SmallJobs.Estimate(Job()).Bid));

    // Each figure is a share of the price, so the range of a house in another pose is the same to the cent.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Range_OfATurnedAndReorderedHouse_IsTheSame(int number)
    {
        var job = HouseGen.Number(number);
        var (here, there) = (SmallJobs.Estimate(job).Bid, SmallJobs.Estimate(JobTransforms.Shuffled(JobTransforms.Turned(job))).Bid);
        Assert.Equal((here.Low.Value, here.High.Value, here.Range.WithinPrice.Value), (there.Low.Value, there.High.Value, there.Range.WithinPrice.Value));
        Assert.Equal(here.Range.Bins, there.Range.Bins);
    }

    [Fact]
    public void Factors_OfASmallJob_StandByTheirSwingAndActOnSharesOfCost()
    {
        var range = SmallJobs.Estimate(Job()).Bid.Range;
        Assert.Equal(range.Factors.OrderByDescending(f => f.Swing).Select(f => f.Key), range.Factors.Select(f => f.Key));
        Assert.Equal("crew", range.Factors[0].Key);
        Assert.All(range.Factors, f => Assert.InRange(f.Share.Value, 0.0001m, 100.0001m));
    }

    [Fact]
    public void Range_WithoutACost_IsThePrice()
    {
        var free = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom) with { Bid = new BidSettings { Permit = Money.Zero, ElectricianWage = Money.Zero, HelperWage = Money.Zero } }).Bid;
        Assert.True(free.Low.Value <= free.Price.Value && free.Price.Value <= free.High.Value);
    }

    private static decimal Width(Bid bid) => bid.Range.AbovePercent.Value + bid.Range.BelowPercent.Value;

    private static Unknown Unknown(string id, UnknownTopic topic) => new() { Id = id, Topic = topic };

    private static Job Job() => SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 5), (DeviceKind.CeilingLight, 2), (DeviceKind.SinglePoleSwitch, 1), (DeviceKind.SmokeAlarm, 1));
}
