using Estimator.Engine.Catalogue;
using Estimator.Engine.House;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Labor;

public sealed class LaborHoursTests
{
    // receptacle 0.20 / 0.20: common practice, no source; trim by the Russian housing norm 0.19, rounded.
    [Fact]
    public void Hours_OfReceptacles_AreCountTimesUnit()
    {
        var estimate = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 6)));
        Assert.Equal(1.2m, Hours(estimate, "receptacle-15", WorkPhase.RoughIn));
        Assert.Equal(1.2m, Hours(estimate, "receptacle-15", WorkPhase.TrimOut));
    }

    // Two switches in one box: 0.20 and 0.05 rough; 0.20 and 75% of 0.20 trim. SINAPI 0.73 to 0.80 for further devices.
    [Fact]
    public void Hours_OfFurtherDeviceInABox_AreFewer()
    {
        var estimate = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.SinglePoleSwitch, 2), (DeviceKind.CeilingFan, 1)));
        Assert.Equal(0.25m, Hours(estimate, "switch-single-pole", WorkPhase.RoughIn));
        Assert.Equal(0.35m, Hours(estimate, "switch-single-pole", WorkPhase.TrimOut));
    }

    // Fishing acts on rough-in alone (common practice, no source): twice the hours there, the same at trim-out.
    [Fact]
    public void Hours_InFinishedWalls_DoubleRoughInAlone()
    {
        var open = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 6));
        var (a, b) = (SmallJobs.Estimate(open), SmallJobs.Estimate(open.With(r => r with { Walls = WallState.Finished })));
        Assert.Equal(2 * Hours(a, "receptacle-15", WorkPhase.RoughIn), Hours(b, "receptacle-15", WorkPhase.RoughIn));
        Assert.Equal(Hours(a, "receptacle-15", WorkPhase.TrimOut), Hours(b, "receptacle-15", WorkPhase.TrimOut));
        Assert.All(b.Wiring.Runs, r => Assert.True(r.Fished && r.Path.Way is not RunWay.AlongWalls));
        Assert.Contains(b.Takeoff.Lines, l => l.ItemId.StartsWith("box-old", StringComparison.Ordinal));
    }

    [Fact]
    public void OwnerSupplied_Device_HasLaborAndNoMaterial()
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom).With(r => r with { Placed = [new PlacedDevice { Id = "own", Kind = DeviceKind.CeilingLight, At = new GridPoint(Engine.Measures.Length.FromFeet(8), Engine.Measures.Length.FromFeet(6)), OwnerSupplied = true }] });
        var estimate = SmallJobs.Estimate(job);
        Assert.True(Hours(estimate, "luminaire-ceiling", WorkPhase.TrimOut) > 0);
        Assert.DoesNotContain(estimate.Purchase.Lines, l => l.ItemId == "luminaire-ceiling");
    }

    private static decimal Hours(JobEstimate estimate, string item, WorkPhase phase) =>
        estimate.Labor.Lines.Where(l => l.ItemId == item && l.Phase == phase).Sum(l => l.Hours.Value);
}
