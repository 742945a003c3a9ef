using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Panels;
using Estimator.Engine.Wiring.Circuits;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Wiring;

/// <summary>Breakers and conductors of circuits for one piece of equipment.</summary>
public sealed class CircuitRatingTests
{
    // Standard sizes: NEC 240.6(A). The nameplate states a maximum, NEC 440.22 and 110.3(B), so a size between two takes the lower.
    [Theory]
    [InlineData(30, 30)]
    [InlineData(33, 30)]
    [InlineData(49, 45)]
    [InlineData(50, 50)]
    public void Nameplate_MaximumDevice_IsNeverExceeded(int maximum, int breaker)
    {
        var circuit = Individual(Conditioner with { MaximumOvercurrentDeviceA = Current.FromAmperes(maximum) });
        Assert.Equal(breaker, circuit.BreakerA.Value);
    }

    // A conductor for the minimum circuit ampacity: 12 AWG carries 20 A at 60 C, NEC table 310.16; the device may be larger, NEC 240.4(G) and 440.22.
    [Fact]
    public void Nameplate_MinimumAmpacity_SizesTheConductor() =>
        Assert.Equal("12", Individual(Conditioner with { MaximumOvercurrentDeviceA = Current.FromAmperes(30) }).Wire.ToString());

    // 40 A at 60 C is 8 AWG, NEC table 310.16.
    [Fact]
    public void PinnedBreaker_OfEquipment_IsTakenWithItsConductor()
    {
        var circuit = Individual(Water, 40);
        Assert.Equal((40m, "8"), (circuit.BreakerA.Value, circuit.Wire.ToString()));
    }

    [Fact]
    public void PinnedBreaker_Explained_NamesItsPlaceInTheJobFile()
    {
        var estimate = SmallJobs.Estimate(With(Water, 40));
        var leaf = estimate.Book[estimate.Wiring.Circuits.Single(c => c.Kind is CircuitKind.Individual).BreakerA.Node];
        Assert.Equal((Operation.Given, "$.pins.circuits[0].breaker_a"), (leaf.Operation, leaf.Rule));
    }

    private static Equipment Conditioner { get; } = new()
    {
        Id = "E1",
        Kind = EquipmentKind.AirConditioner,
        Room = "R1",
        MinimumCircuitAmpacityA = Current.FromAmperes(20),
    };

    private static Equipment Water { get; } = new() { Id = "E1", Kind = EquipmentKind.WaterHeater, Room = "R1" };

    private static Circuit Individual(Equipment equipment, int? pinned = null) =>
        SmallJobs.Estimate(With(equipment, pinned)).Wiring.Circuits.Single(c => c.Kind is CircuitKind.Individual);

    private static Job With(Equipment equipment, int? pinned) => SmallJobs.OneRoom(RoomKind.Utility, (DeviceKind.DuplexReceptacle, 1)) with
    {
        Equipment = [equipment],
        Pins = new Pins
        {
            Circuits = pinned is { } amperes
                ? [new PinnedCircuit { Id = "own", Panel = "P1", BreakerA = Current.FromAmperes(amperes), Outlets = [equipment.Id] }]
                : [],
        },
    };
}
