using Estimator.Engine.House;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Joints;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Wiring;

/// <summary>Connectors by box, as the trade makes boxes up: common practice, no source.</summary>
public sealed class JoiningTests
{
    [Fact]
    public void Receptacles_InARow_SpliceInTheMiddleAndNotAtTheEnd()
    {
        var boxes = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 3))).Wiring.Boxes;
        Assert.All(boxes.Where(b => b.CableEntries == 1), b => Assert.DoesNotContain(b.Joints, j => j.Connector));
        Assert.All(boxes.Where(b => b.CableEntries == 2), b => Assert.Equal((1, 1, 1), Counts(b)));
        Assert.Contains(boxes, b => b.CableEntries == 1);
    }

    [Fact]
    public void SinglePoleSwitch_WithFeedAndLeg_SplicesNeutralAndGround()
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.SinglePoleSwitch, 1), (DeviceKind.CeilingLight, 1));
        var boxes = SmallJobs.Estimate(job with { Practice = new Practice { ControlFeed = ControlFeed.AtSwitch } }).Wiring.Boxes;
        Assert.Equal((0, 1, 1), Counts(boxes.First(b => b.Use is Engine.Catalogue.BoxUse.Wall)));
        Assert.Equal((1, 1, 1), Counts(boxes.First(b => b.Id == "R1/ceiling_light-1")));
    }

    [Fact]
    public void Fan_WithSeparateLight_SplicesTwoHots()
    {
        var boxes = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.SinglePoleSwitch, 2), (DeviceKind.CeilingFan, 1))).Wiring.Boxes;
        Assert.Equal((2, 1, 1), Counts(boxes.First(b => b.Use is Engine.Catalogue.BoxUse.Fan)));
    }

    [Fact]
    public void GfciReceptacle_FeedingOnward_UsesItsLineAndLoad()
    {
        var boxes = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Garage, (DeviceKind.GfciReceptacle, 1), (DeviceKind.DuplexReceptacle, 2))).Wiring.Boxes;
        Assert.Equal((0, 0, 1), Counts(boxes.First(b => b.Id.Contains("gfci", StringComparison.Ordinal))));
    }

    [Fact]
    public void Alarm_WithInterconnect_SplicesItsSignal()
    {
        var boxes = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.SmokeAlarm, 2))).Wiring.Boxes;
        Assert.All(boxes, b => Assert.Single(b.Joints, s => s.Connector && s.Function is ConductorFunction.Interconnect));
    }

    private static (int Hot, int Neutral, int Ground) Counts(Box box) => (
        box.Joints.Count(s => s.Connector && s.Function is ConductorFunction.Hot or ConductorFunction.Switched),
        box.Joints.Count(s => s.Connector && s.Function is ConductorFunction.Neutral),
        box.Joints.Count(s => s.Connector && s.Function is ConductorFunction.Ground));
}
