using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Controls;

/// <summary>Which switches can act together: the poles and throws of the devices, common practice, no source.</summary>
public sealed class SwitchKindsTests
{
    [Theory]
    [InlineData(Severity.Mandatory, DeviceKind.SinglePoleSwitch, DeviceKind.SinglePoleSwitch)]
    [InlineData(Severity.Mandatory, DeviceKind.ThreeWaySwitch, DeviceKind.ThreeWaySwitch, DeviceKind.ThreeWaySwitch)]
    [InlineData(Severity.Mandatory, DeviceKind.ThreeWaySwitch, DeviceKind.FourWaySwitch)]
    [InlineData(Severity.Mandatory, DeviceKind.ThreeWaySwitch, DeviceKind.SinglePoleSwitch)]
    [InlineData(Severity.Advice, DeviceKind.FourWaySwitch)]
    [InlineData(Severity.Note, DeviceKind.ThreeWaySwitch, DeviceKind.Dimmer)]
    [InlineData(null, DeviceKind.SinglePoleSwitch)]
    [InlineData(null, DeviceKind.ThreeWaySwitch, DeviceKind.ThreeWaySwitch)]
    [InlineData(null, DeviceKind.ThreeWaySwitch, DeviceKind.FourWaySwitch, DeviceKind.FourWaySwitch, DeviceKind.ThreeWaySwitch)]
    public void Plan_OfAStatedControl_FindsSwitchesThatCannot(Severity? found, params DeviceKind[] switches)
    {
        var placed = switches.Select((k, i) => new PlacedDevice { Id = $"s{i}", Kind = k, Wall = new WallSpot((i % 4) + 1, Length.FromFeet(4)) });
        var job = SmallJobs.OneRoom(RoomKind.Hall, (DeviceKind.CeilingLight, 1)).With(r => r with { Placed = [.. placed] }) with
        {
            Controls = [new Control { Id = "hall", Switches = [.. switches.Select((_, i) => $"s{i}")], Loads = ["R1/ceiling_light-1"] }],
        };
        Assert.Equal(found, SmallJobs.Estimate(job).Controls.Findings.FirstOrDefault(f => f.Code == "switch-kind")?.Severity);
    }

    [Fact]
    public void Plan_OfAControlWithoutLoads_SaysSo()
    {
        var job = SmallJobs.OneRoom(RoomKind.Hall, (DeviceKind.SinglePoleSwitch, 1)) with { Controls = [new Control { Id = "idle", Switches = ["R1/single_pole_switch-1"], Loads = [] }] };
        Assert.Contains(SmallJobs.Estimate(job).Controls.Findings, f => f.Code == "switch-without-load");
    }
}
