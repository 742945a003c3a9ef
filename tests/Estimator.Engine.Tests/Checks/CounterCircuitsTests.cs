using Estimator.Engine.House;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Checks;

/// <summary>The counters of a kitchen hang on two small-appliance circuits. Source: NEC 210.52(B)(3).</summary>
public sealed class CounterCircuitsTests
{
    [Fact]
    public void Counters_DividedByTheProgram_HangOnTwoCircuits()
    {
        var estimate = SmallJobs.Estimate(Kitchen([]));
        Assert.DoesNotContain(estimate.Findings, f => f.Code == "counter-circuits");
        Assert.Contains("counter-circuits", estimate.AppliedRules);
    }

    [Fact]
    public void Counters_PinnedToOneCircuit_AreFound() => Assert.Contains(
        SmallJobs.Estimate(Kitchen(["R1/duplex_receptacle-counter-1", "R1/duplex_receptacle-counter-2"])).Findings, f => f.Code == "counter-circuits");

    private static Job Kitchen(string[] pinned)
    {
        var job = SmallJobs.OneRoom(RoomKind.Kitchen, (DeviceKind.DuplexReceptacle, 6))
            .With(r => r with { Counts = r.Counts.Add(new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 2, Serves = ServedPlace.Counter }) });
        return job with { Pins = new Pins { Circuits = pinned.Length == 0 ? [] : [new PinnedCircuit { Id = "one", Panel = "P1", Outlets = [.. pinned] }] } };
    }
}
