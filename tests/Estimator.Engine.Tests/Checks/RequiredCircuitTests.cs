using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Checks;

/// <summary>Required circuits feed what they are there for, and general ones are enough. Articles as in NEC 2017 to 2023.</summary>
public sealed class RequiredCircuitTests
{
    // NEC 210.11(C)(2) to (4): no other outlets; a bathroom circuit of one bathroom may feed the rest of it.
    [Theory]
    [InlineData(RoomKind.Laundry, "210.11(C)(2)", true)]
    [InlineData(RoomKind.Garage, "210.11(C)(4)", true)]
    [InlineData(RoomKind.Bathroom, "210.11(C)(3)", false)]
    public void Outlets_OfARequiredCircuit_AreNoLights(RoomKind kind, string article, bool found)
    {
        var job = SmallJobs.OneRoom(kind, (DeviceKind.DuplexReceptacle, 1), (DeviceKind.CeilingLight, 1));
        job = job with { Pins = new Pins { Circuits = [new PinnedCircuit { Id = "mixed", Panel = "P1", Outlets = ["R1/duplex_receptacle-1", "R1/ceiling_light-1"] }] } };
        Assert.Equal(found, SmallJobs.Estimate(job).Findings.Any(f => f.Code == "circuit-other-outlets" && f.Article == article));
    }

    // NEC 210.11(A): 3 VA a square foot; a 15 A circuit carries 15 x 120 = 1800 VA, so 600 sq ft. 25 by 24 ft is 600, one foot more is 625.
    [Theory]
    [InlineData(24, false)]
    [InlineData(25, true)]
    public void General_CircuitOfLights_CarriesSoMuchFloor(int depthFt, bool found)
    {
        var job = SmallJobs.OneRoom(RoomKind.Family, (DeviceKind.CeilingLight, 2), (DeviceKind.SinglePoleSwitch, 1))
            .With(r => r with { Size = new RectangleSize(Length.FromFeet(25), Length.FromFeet(depthFt)) });
        Assert.Equal(found, SmallJobs.Estimate(job).Findings.Any(f => f.Code == "general-circuits"));
    }
}
