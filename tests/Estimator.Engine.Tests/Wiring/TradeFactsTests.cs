using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Panels;
using Estimator.Engine.Wiring.Routing;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Wiring;

/// <summary>What every electrician expects. Each is common practice, no source, unless an article stands beside it.</summary>
public sealed class TradeFactsTests
{
    [Fact]
    public void Circuit_Of20A_IsWiredIn12Awg()
    {
        var estimate = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 6)));
        var circuit = Assert.Single(estimate.Wiring.Circuits);
        Assert.Equal((20m, "12"), (circuit.BreakerA.Value, circuit.Wire.ToString()));
    }

    [Theory]
    [InlineData(10, 1)]
    [InlineData(11, 2)]
    [InlineData(20, 2)]
    [InlineData(21, 3)]
    public void MixedCircuit_Of20A_TakesTenLightsAndReceptacles(int outlets, int circuits)
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, outlets)) with { Practice = new Practice { MixLightsAndReceptacles = true } };
        Assert.Equal(circuits, SmallJobs.Estimate(job).Wiring.Circuits.Length);
    }

    [Fact]
    public void Cable_BetweenThreeWaySwitches_HasThreeConductors()
    {
        var estimate = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.ThreeWaySwitch, 2), (DeviceKind.CeilingLight, 1)));
        var travellers = Assert.Single(estimate.Wiring.Runs, r => r.Role is RunRole.Travellers);
        Assert.Equal("14/3", travellers.Cable.TradeName);
    }

    [Fact]
    public void Cable_BetweenFourWays_HasThreeConductorsEach()
    {
        var estimate = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Hall, (DeviceKind.ThreeWaySwitch, 2), (DeviceKind.FourWaySwitch, 1), (DeviceKind.CeilingLight, 2)));
        Assert.Equal(2, estimate.Wiring.Runs.Count(r => r.Role is RunRole.Travellers && r.Cable.Conductors == 3));
    }

    [Fact]
    public void Cable_ToFanWithSeparateLight_HasThreeConductors()
    {
        var estimate = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.CeilingFan, 1), (DeviceKind.SinglePoleSwitch, 2)));
        var leg = Assert.Single(estimate.Wiring.Runs, r => r.Role is RunRole.SwitchedLeg);
        Assert.Equal("14/3", leg.Cable.TradeName);
        Assert.Contains(estimate.Takeoff.Lines, l => l.ItemId.StartsWith("box-fan", StringComparison.Ordinal));
    }

    [Fact]
    public void Cable_BetweenAlarms_CarriesTheInterconnect()
    {
        var estimate = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.SmokeAlarm, 2)));
        Assert.Equal("14/3", Assert.Single(estimate.Wiring.Runs, r => r.Role is RunRole.Interconnect).Cable.TradeName);
    }

    // A receptacle costs 10-20 ft of cable and 0.5-0.7 h at the habit's spacing; here rooms are small, so the band is opened to 5 ft and 0.4 h.
    [Fact]
    public void Receptacle_OneMoreInABedroom_CostsAboutOneUnitPrice()
    {
        var before = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 6)));
        var after = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 7)));
        Assert.InRange(Feet(after) - Feet(before), 2m, 20m);
        Assert.InRange(after.Labor.Total.Value - before.Labor.Total.Value, 0.4m, 0.8m);
        Assert.Equal(before.Wiring.Circuits.Length, after.Wiring.Circuits.Length);
    }

    // Bands for the whole job: common practice, no source. Cable for the lights and three-wire cable land below the band: see the test's own room sizes.
    // The band's hours have the trips in them, and so have paid hours.
    [Fact]
    public void Basement_OfTheSample_LandsInItsBands()
    {
        var text = File.ReadAllText(Path.Combine(TestData.Repository, "src", "Estimator.Cli", "Samples", "basement-finish.json"));
        var estimate = SmallJobs.Estimate(Engine.JobFiles.JobFile.Read(text, "basement").Job);
        Assert.InRange(estimate.Wiring.Boxes.Count(b => b.Item is not null), 22, 27);
        Assert.InRange(estimate.Bid.PaidHours.Value, 32m, 42m);
        Assert.Equal(
            ["15 ArcFault", "20 DualFunction", "20 DualFunction", "20 Plain"],
            estimate.Wiring.Circuits.Select(c => $"{c.BreakerA.Value:0} {c.Protection}").Order(StringComparer.Ordinal));
    }

    // 240.4(G) and 440: marked 24.9 A minimum ampacity and 40 A device, an air conditioner may sit on 10 AWG with a 40 A breaker (trade Q&A threads).
    [Fact]
    public void AirConditioner_ByNameplate_SitsOn10AwgWith40A()
    {
        var job = SmallJobs.OneRoom(RoomKind.Utility) with
        {
            Equipment = [new Equipment { Id = "ac", Kind = EquipmentKind.AirConditioner, Room = "R1", MinimumCircuitAmpacityA = Current.FromAmperes(24.9m), MaximumOvercurrentDeviceA = Current.FromAmperes(40) }],
        };
        var estimate = SmallJobs.Estimate(job);
        var circuit = Assert.Single(estimate.Wiring.Circuits);
        Assert.Equal((40m, "10", 2), (circuit.BreakerA.Value, circuit.Wire.ToString(), circuit.Poles));
        Assert.DoesNotContain(estimate.Findings, f => f.Code == "conductor-to-breaker");
    }

    [Theory]
    [InlineData(GroundFaultBy.Breaker, Protection.GroundFault, 0)]
    [InlineData(GroundFaultBy.FirstReceptacle, Protection.Plain, 1)]
    public void GroundFault_AsTheUserPrefers_SitsInBreakerOrFirstReceptacle(GroundFaultBy by, Protection breaker, int devices)
    {
        var job = SmallJobs.OneRoom(RoomKind.Garage, (DeviceKind.DuplexReceptacle, 4)) with { Practice = new Practice { GroundFaultBy = by } };
        var estimate = SmallJobs.Estimate(job);
        Assert.Equal(breaker, Assert.Single(estimate.Wiring.Circuits).Protection);
        Assert.Equal(devices, estimate.Takeoff.Lines.Where(l => l.ItemId.StartsWith("gfci", StringComparison.Ordinal)).Sum(l => l.Quantity.Value));
        Assert.DoesNotContain(estimate.Findings, f => f.Code == "ground-fault-protection");
    }

    private static decimal Feet(JobEstimate estimate) => estimate.Takeoff.Lines.Where(l => l.Category == "cable").Sum(l => l.Quantity.Value);
}
