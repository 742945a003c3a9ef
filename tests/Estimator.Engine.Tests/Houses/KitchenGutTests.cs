using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Houses;

/// <summary>
/// A kitchen stripped to the studs in an occupied house of 1965, NEC 2020, against what an estimator expects of it. Bands: common practice, no source.
/// Where a figure lies outside its band, the test says why.
/// </summary>
public sealed class KitchenGutTests
{
    private static readonly Job Kitchen = JobFile.Read(File.ReadAllText(Path.Combine(TestData.Root, "jobs", "kitchen-gut.json")), "kitchen-gut.json").Job;
    private static readonly JobEstimate Estimate = SmallJobs.Estimate(Kitchen);

    // Bands: 12/2 370-450 ft, 6/3 55-70 ft. The home runs are measured at 42 to 50 ft, 45 stated.
    [Theory]
    [InlineData("nm_b-12-2", 370, 450)]
    [InlineData("nm_b-6-3", 55, 70)]
    public void Cable_OfPowerCircuits_LiesInItsBand(string item, int least, int most) => Assert.InRange(Quantity(item), least, most);

    // Band: 14/2 160-220 ft, from hops of 8 to 12 ft between lights. Measured on the plan eight recessed lights stand 3 to 6 ft apart over 12 x 14 ft, so seven
    // hops of some 5 ft with their tails and one home run come to about 120 ft; the band's own count would be 45 + 10 x 12.
    // Band: 14/3 30 ft. From switch to switch it is 10 ft along the floor and up and down, 26 ft with its tails.
    [Theory]
    [InlineData("nm_b-14-2", 105, 135)]
    [InlineData("nm_b-14-3", 20, 30)]
    public void Cable_OfTheLights_IsShorterThanItsBandForTheyStandClose(string item, int least, int most) => Assert.InRange(Quantity(item), least, most);

    // Band: 20-24 boxes, recessed lights apart.
    [Fact]
    public void Boxes_LieInTheirBand() => Assert.InRange(Estimate.Takeoff.Lines.Where(l => l.Category == "box").Sum(l => l.Quantity.Value), 20, 24);

    // 4 dual-function 20 A, 2 AFCI 20 A, 1 AFCI 15 A, one 2-pole 50 A.
    [Theory]
    [InlineData("breaker-1-20-dual_function", 4)]
    [InlineData("breaker-1-20-arc_fault", 2)]
    [InlineData("breaker-1-15-arc_fault", 1)]
    [InlineData("breaker-2-50-plain", 1)]
    public void Breakers_AreThoseExpected(string item, int count) => Assert.Equal(count, Quantity(item));

    // Expected is a small subpanel on a 2-pole 60 A. With the range on it, part III gives 504 + 3000 VA of lighting and small appliances at their demand 3176.4,
    // 8000 of the range, 3640 of three fastened appliances and 235 for the disposer's motor: 15,051.4 VA, 62.7 A. 60 A does not carry it, 70 A does.
    [Fact]
    public void Subpanel_OnSixtyAmperes_IsTooSmallAndSeventyIsNot()
    {
        Assert.Equal(15_051.4m, Assert.Single(Estimate.Loads.Feeders).Sheet.TotalVa.Value);
        Assert.DoesNotContain(Estimate.Findings, f => f.Code == "feeder-load");
        var sixty = SmallJobs.Estimate(Kitchen with { Panels = [.. Kitchen.Panels.Select(p => p.Id == "P2" ? p with { RatingA = Current.FromAmperes(60) } : p)] });
        Assert.Contains(sixty.Findings, f => f.Code == "feeder-load");
        Assert.Equal((1m, 1m), (Quantity("breaker-2-70-plain"), Quantity("panel-100")));
    }

    // Band: 42-55 h, trips in them: they stand in the productive share, so paid hours are what it is of. An opening takes 1.5 h or so in an occupied kitchen.
    [Fact]
    public void PaidHours_LieInTheirBand()
    {
        var paid = Estimate.Bid.PaidHours.Value;
        Assert.InRange(paid, 42, 55);
        Assert.InRange(paid / Estimate.Takeoff.Openings.Value, 1.3m, 1.7m);
    }

    // Both free spaces go to the feeder; nothing is left without a place, and the legs of the new panel are proven even.
    [Fact]
    public void Panels_TakeEveryBreaker()
    {
        Assert.All(Estimate.Schedules.Panels, s => Assert.Empty(s.Unplaced));
        Assert.True(Estimate.Schedules["P2"].Proven);
        Assert.Empty(Estimate.Schedules["P1"].FreeSpaces);
    }

    private static decimal Quantity(string item) => Estimate.Takeoff.Lines.Where(l => l.ItemId == item).Sum(l => l.Quantity.Value);
}
