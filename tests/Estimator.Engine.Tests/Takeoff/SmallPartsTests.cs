using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Takeoff;

/// <summary>Parts that follow from the framing and the wiring method.</summary>
public sealed class SmallPartsTests
{
    // NEC 300.4(A)(1): 1-1/4 in. A 3/4 in hole in the middle leaves (3.5 - 0.75) / 2 = 1-3/8 in of a 2x4 and (2.5 - 0.75) / 2 = 7/8 in of a 2x3.
    [Theory]
    [InlineData("3.5", 0)]
    [InlineData("3.25", 0)]
    [InlineData("3.1875", 2)]
    [InlineData("2.5", 2)]
    public void NailPlates_OnWallRuns_FollowTheDepthOfTheStuds(string depthInches, int platesForAHole)
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 5));
        var depth = Length.FromInches(decimal.Parse(depthInches, System.Globalization.CultureInfo.InvariantCulture));
        var estimate = SmallJobs.Estimate(job with { Levels = [job.Levels[0] with { Framing = new LevelFraming { StudDepth = depth } }] });
        Assert.All(estimate.Wiring.Runs, r => Assert.Equal(RunWay.AlongWalls, r.Path.Way));
        var holes = estimate.Wiring.Runs.Sum(r => r.Path.Bores.Value);
        Assert.True(holes > 0);
        Assert.Equal(platesForAHole * holes, estimate.Takeoff.Lines.Where(l => l.ItemId == "nail-plate").Sum(l => l.Quantity.Value));
    }

    // Receptacles of a circuit are at least its rating, 210.21(B)(1), and 50 A ones may stand on 40 A circuits, 210.21(B)(3).
    [Theory]
    [InlineData(4_000, "receptacle-240-20")]
    [InlineData(5_000, "receptacle-240-30")]
    [InlineData(9_000, "receptacle-240-50")]
    [InlineData(13_000, "receptacle_240v-60")]
    public void Receptacle_Of240V_CarriesItsCircuit(int loadVa, string item)
    {
        var job = SmallJobs.OneRoom(RoomKind.Utility) with
        {
            Equipment = [new Equipment { Id = "e", Kind = EquipmentKind.Other, Room = "R1", Volts = 240, LoadVa = Power.FromVoltAmperes(loadVa), Connection = Connection.Receptacle, OwnCircuit = true }],
        };
        Assert.Contains(SmallJobs.Estimate(job).Takeoff.Lines, l => l.ItemId == item);
    }

    // A dimmer that works with three-way switches is made for it: common practice, no source.
    [Theory]
    [InlineData(DeviceKind.ThreeWaySwitch, "dimmer-three-way")]
    [InlineData(null, "dimmer")]
    public void Dimmer_ThatActsWithOthers_IsMadeForIt(DeviceKind? other, string item)
    {
        PlacedDevice At(string id, DeviceKind kind, int feet) => new() { Id = id, Kind = kind, Wall = new WallSpot(1, Length.FromFeet(feet)) };
        var job = SmallJobs.OneRoom(RoomKind.Bedroom);
        var room = job.Levels[0].Rooms[0];
        var switches = other is { } kind ? new[] { At("s1", DeviceKind.Dimmer, 2), At("s2", kind, 8) } : [At("s1", DeviceKind.Dimmer, 2)];
        var estimate = SmallJobs.Estimate(job with
        {
            Levels = [job.Levels[0] with { Rooms = [room with { Placed = [.. switches, new PlacedDevice { Id = "l", Kind = DeviceKind.WallLight, Wall = new WallSpot(3, Length.FromFeet(4)) }] }] }],
            Controls = [new Control { Id = "c", Switches = [.. switches.Select(s => s.Id)], Loads = ["l"] }],
        });
        Assert.Equal(item, Assert.Single(estimate.Takeoff.Lines, l => l.ItemId.StartsWith("dimmer", StringComparison.Ordinal)).ItemId);
    }
}
