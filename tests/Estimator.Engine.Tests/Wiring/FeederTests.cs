using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Wiring;

/// <summary>Feeders of subpanels. The room is 16 by 12 ft with an 8 ft ceiling; the panel hangs on its side 4, 1 ft from the corner.</summary>
public sealed class FeederTests
{
    // Table 310.16 at 60 C with the next standard breaker, 240.4(B): 6 AWG 55 A to 60, 4 AWG 70 A, 2 AWG 95 A to 100; aluminium at 75 C: 1/0 120 A to 125,
    // 3/0 155 A to 175, 4/0 180 A to 200. 310.12 would allow 2/0 for 150 A and does not apply to part of a house; 2/0 has 135 A and reaches 150 all the same.
    // Grounding conductor: table 250.122.
    [Theory]
    [InlineData(30, "nm_b-10-3", "10")]
    [InlineData(60, "nm_b-6-3", "10")]
    [InlineData(70, "nm_b-4-3", "8")]
    [InlineData(90, "nm_b-2-3", "8")]
    [InlineData(100, "nm_b-2-3", "8")]
    [InlineData(125, "ser-al-1_0-3", "4")]
    [InlineData(150, "ser-al-2_0-3", "4")]
    [InlineData(175, "ser-al-3_0-3", "4")]
    [InlineData(200, "ser-al-4_0-3", "4")]
    public void Feeder_OfARating_TakesTheCableOfTheTables(int rating, string item, string ground)
    {
        var feeder = Assert.Single(Estimate(rating, 10).Wiring.Feeders);
        Assert.Equal((item, ground), (feeder.ItemId, feeder.Ground.ToString()));
    }

    // Both panels hang on side 4, 9 ft apart. By hand: along the wall 9 ft, no rise, 5 ft left at each panel, 3% slack on the 9 ft: 19.27 ft.
    [Fact]
    public void Feeder_AlongAWall_IsMeasuredFromPanelToPanelAndBought()
    {
        var estimate = Estimate(60, 10);
        Assert.Equal(19.27m, estimate.Takeoff.Lines.Single(l => l.ItemId == "nm_b-6-3").Quantity.Value);
        Assert.Contains(estimate.Purchase.Cuts, c => c.ItemId == "nm_b-6-3" && c.Coils.Sum(x => x.Pieces.Length) == 1);
        Assert.Equal(1m, estimate.Takeoff.Lines.Single(l => l.ItemId == "breaker-2-60-plain").Quantity.Value);
        Assert.Equal(1m, estimate.Takeoff.Lines.Single(l => l.ItemId == "ground-bar").Quantity.Value);
    }

    // By hand: 2 x 0.49 ohm/kft x 19.27 ft x 2.4 A (576 VA of the room by area / 240 V) / 240 V = 0.0189%; NEC chapter 9 table 9, 6 AWG.
    [Fact]
    public void VoltageDrop_OfAFeeder_IsThatOfItsLoad() =>
        Assert.Equal(0.0189m, decimal.Round(Assert.Single(Estimate(60, 10).Loads.Feeders).VoltageDropPercent!.Value.Value, 4, MidpointRounding.AwayFromZero));

    // Where pipe is run, so is the feeder: by hand 9 ft of pipe; three conductors of 19.27 ft in 6 AWG and a grounding one in 10 AWG, 250.122.
    // Chapter 9: 3 x 0.0507 + 0.0211 = 0.1732 sq in, 40% of 1/2 in EMT is 0.122 and of 3/4 in 0.213. Over 100 A copper at 75 C: 1 AWG has 130 A, and the next standard breaker is 150, 240.4(B).
    [Fact]
    public void Feeder_WherePipeIsRun_IsPulledIntoPipe()
    {
        var job = Job(60, 10, false);
        var items = SmallJobs.Estimate(job with { Practice = new Practice { WiringMethod = WiringMethod.Emt } }).Takeoff.Lines.Where(l => l.Where.Contains("P2")).ToDictionary(l => l.ItemId, l => l.Quantity.Value);
        Assert.Equal((9m, 57.81m, 19.27m), (items["emt-3_4"], items["thhn-6"], items["thhn-10"]));
        var large = Job(150, 10, false);
        Assert.Equal("thhn-1", Assert.Single(SmallJobs.Estimate(large with { Practice = new Practice { WiringMethod = WiringMethod.Emt } }).Wiring.Feeders).ItemId);
    }

    [Fact]
    public void Feeder_OfAPanelThatIsThere_IsNotRunAgain() => Assert.Empty(Estimate(60, 10, existing: true).Wiring.Feeders);

    // Our table of conductors ends at 4/0.
    [Theory]
    [InlineData(225)]
    [InlineData(600)]
    public void Feeder_BeyondTheTables_IsSaid(int rating) => Assert.Contains(Estimate(rating, 10).Findings, f => f.Code == "feeder-too-large");

    [Fact]
    public void NewCircuits_OfAClosedPanel_StartAtTheOther()
    {
        var estimate = Estimate(60, 10);
        Assert.All(estimate.Wiring.Circuits, c => Assert.Equal("P2", estimate.Layout.Panels[c.Panel].Source.Id));
    }

    // A moved circuit has a breaker of its own in the new panel and frees its space in the old one.
    [Fact]
    public void MovedCircuit_IsCountedAndFreesItsSpace()
    {
        var job = Job(60, 10, false);
        var circuits = job.Panels[0].Circuits.Add(new ExistingCircuit { Id = "hall", Name = "Hall", BreakerA = Current.FromAmperes(15), MovedTo = "P2" });
        var estimate = SmallJobs.Estimate(job with { Panels = [job.Panels[0] with { Circuits = circuits }, job.Panels[1]] });
        Assert.Contains(estimate.Takeoff.Lines, l => l.ItemId == "circuit-moved" && l.Quantity.Value == 1);
        Assert.Contains(estimate.Takeoff.Lines, l => l.ItemId == "breaker-1-15-plain" && l.Where.Contains("P2"));
        Assert.DoesNotContain(estimate.Schedules["P1"].Breakers, b => b.Breaker.Id == "hall");
        Assert.Contains(estimate.Schedules["P2"].Breakers, b => b.Breaker.Id == "hall");
    }

    private static JobEstimate Estimate(int rating, int offsetFeet, bool existing = false) => SmallJobs.Estimate(Job(rating, offsetFeet, existing));

    private static Job Job(int rating, int offsetFeet, bool existing)
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 2));
        return job with
        {
            Panels =
            [
                job.Panels[0] with { NoNewCircuits = true },
                job.Panels[0] with { Id = "P2", Wall = new WallSpot(4, Length.FromFeet(offsetFeet)), FedFrom = "P1", RatingA = Current.FromAmperes(rating), Existing = existing },
            ],
        };
    }
}
