using Estimator.Engine.Catalogue;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Takeoff;

/// <summary>What each wiring method asks for.</summary>
public sealed class WiringMethodTests
{
    // A steel tube makers' page on conduit fill: three 12, four 10 and eight 8 AWG THWN together fill 0.4171 square inches; EMT of 1 in may hold 0.346
    // and of 1-1/4 in 0.598, so 1-1/4 in is asked for.
    [Fact]
    public void Fill_OfThePublishedExample_AsksForInchAndAQuarter()
    {
        decimal Area(WireSize size, int count) => RacewayRules.ConductorArea(size)!.Number("area_sq_in") * count;
        var area = Area(WireSize.Awg12, 3) + Area(WireSize.Awg10, 4) + Area(WireSize.Parse("8").Value, 8);
        Assert.Equal(0.4171m, area);

        decimal Room(string size) => RacewayRules.Sizes("emt").Single(s => s.Key == size).Number("area_sq_in") * RacewayRules.Fill(15).Number() / 100m;
        Assert.Equal((0.346m, 0.598m), (decimal.Round(Room("emt-1"), 3, MidpointRounding.AwayFromZero), decimal.Round(Room("emt-1-1_4"), 3, MidpointRounding.AwayFromZero)));
        Assert.Equal("emt-1-1_4", RacewayRules.Sizes("emt").First(s => Room(s.Key) >= area).Key);
    }

    [Fact]
    public void Emt_OfAReceptacleCircuit_IsPipeFittingsAndThreeWires()
    {
        var estimate = Wired(RoomKind.Garage, WiringMethod.Emt);
        var pipe = Feet(estimate, "emt-1_2");

        // Two hots and neutrals and a grounding conductor each as long as the run, the pipe without the tails.
        Assert.Equal(3 * estimate.Wiring.Runs.Sum(r => r.Total.AsLength().Value.ToFeet()), Feet(estimate, "thhn-12"), 6);
        Assert.Equal(estimate.Wiring.Runs.Sum(r => r.Path.Horizontal.AsLength().Value.ToFeet() + r.Path.Vertical.AsLength().Value.ToFeet()), pipe, 6);
        Assert.Equal(2 * estimate.Wiring.Runs.Length, Feet(estimate, "emt-1_2-connector"));
        Assert.True(Feet(estimate, "emt-1_2-strap") >= 2 * estimate.Wiring.Runs.Length);
        Assert.Equal(0, Feet(estimate, "staple") + Feet(estimate, "cable-clamp") + Feet(estimate, "nail-plate"));
        Assert.All(estimate.Wiring.Boxes, b => Assert.Equal(BoxMaterial.Metal, b.Item!.Material));
        Assert.Empty(estimate.Purchase.NotPriced);
    }

    [Fact]
    public void Mc_OfAReceptacleCircuit_TakesConnectorsStrapsAndMetalBoxes()
    {
        var estimate = Wired(RoomKind.Garage, WiringMethod.Mc);
        Assert.Equal(2 * estimate.Wiring.Runs.Length, Feet(estimate, "mc-connector"));
        Assert.Equal(estimate.Wiring.Boxes.Length, Feet(estimate, "ground-screw"));
        Assert.True(Feet(estimate, "mc-strap") >= 2 * estimate.Wiring.Runs.Length);
        Assert.Equal(0, Feet(estimate, "staple"));
        Assert.Empty(estimate.Purchase.NotPriced);
    }

    [Fact]
    public void Room_WithAMethodOfItsOwn_IsWiredInItAndTheRestInTheFirms()
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 5));
        var level = job.Levels[0];
        var garage = level.Rooms[0] with { Id = "G", Kind = RoomKind.Garage, WiringMethod = WiringMethod.Emt, At = new GridPoint(Length.FromFeet(40), Length.Zero) };
        var estimate = SmallJobs.Estimate(job with { Levels = [level with { Rooms = [level.Rooms[0] with { At = new GridPoint(Length.Zero, Length.Zero) }, garage] }] });

        Assert.All(estimate.Wiring.Runs, r => Assert.Equal(
            estimate.House.Rooms[estimate.Wiring.Boxes[r.To].Place.Room].Source.Id == "G" ? WiringMethod.Emt : WiringMethod.NmB, r.Cable.Method));
        Assert.Contains(estimate.Wiring.Runs, r => r.Cable.Method is WiringMethod.NmB);
        Assert.Contains(estimate.Wiring.Runs, r => r.Cable.Method is WiringMethod.Emt);
    }

    // A local rule that forces a method outranks rooms and practice.
    [Fact]
    public void LocalRule_ThatForcesAMethod_HoldsInEveryRoom()
    {
        var job = Job(RoomKind.Bedroom, WiringMethod.NmB);
        var estimate = SmallJobs.Estimate(job with
        {
            Code = job.Code with { Amendments = [new Amendment { Id = "a", Kind = AmendmentKind.WiringMethod, Rule = "wiring-method", Text = "Conduit in dwellings.", WiringMethod = WiringMethod.Emt }] },
        });
        Assert.All(estimate.Wiring.Runs, r => Assert.Equal(WiringMethod.Emt, r.Cable.Method));
    }

    [Fact]
    public void Emt_InFinishedWalls_IsSaid()
    {
        var job = Job(RoomKind.Bedroom, WiringMethod.Emt);
        var level = job.Levels[0];
        var finished = SmallJobs.Estimate(job with { Levels = [level with { Rooms = [level.Rooms[0] with { Walls = WallState.Finished }] }] });
        Assert.Contains(finished.Findings, f => f.Code == "conduit-in-finished-walls");
        Assert.DoesNotContain(Wired(RoomKind.Bedroom, WiringMethod.Emt).Findings, f => f.Code == "conduit-in-finished-walls");
    }

    // NEC 358.26 and 352.26 from memory: four quarter bends between pull points. Overhead from a wall box to a wall box round one corner has three.
    [Fact]
    public void Bends_OfEachRun_AreThoseOfItsWay()
    {
        var estimate = Wired(RoomKind.Garage, WiringMethod.Emt);
        Assert.True(Feet(estimate, "emt-1_2-bend") > 0);
        Assert.Equal(0, Feet(estimate, "emt-1_2-body"));
    }

    private static JobEstimate Wired(RoomKind room, WiringMethod method) => SmallJobs.Estimate(Job(room, method));

    private static Job Job(RoomKind room, WiringMethod method) =>
        SmallJobs.OneRoom(room, (DeviceKind.DuplexReceptacle, 5)) with { Practice = new Practice { WiringMethod = method } };

    private static decimal Feet(JobEstimate estimate, string item) => estimate.Takeoff.Lines.Where(l => l.ItemId == item).Sum(l => l.Quantity.Value);
}
