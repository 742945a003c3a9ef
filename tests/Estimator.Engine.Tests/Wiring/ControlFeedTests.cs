using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Tests.Wiring.Simulation;
using Estimator.Engine.Wiring.Joints;
using Estimator.Engine.Wiring.Routing;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Engine.Tests.Wiring;

/// <summary>A light with one switch is fed at the switch or at the light, whichever costs less, with a neutral at the switch where it is asked for.</summary>
public sealed class ControlFeedTests
{
    // NEC 404.2(C): bathrooms, halls, stairs and rooms to live in; a garage is none. NEC 200.7(C)(1): the white of a switch loop is the supply, marked again.
    [Theory]
    [InlineData(RoomKind.Garage, "14/2", true)]
    [InlineData(RoomKind.Storage, "14/2", true)]
    [InlineData(RoomKind.Attic, "14/2", true)]
    [InlineData(RoomKind.Bedroom, "14/3", false)]
    [InlineData(RoomKind.Hall, "14/3", false)]
    [InlineData(RoomKind.Bathroom, "14/3", false)]
    public void SwitchLoop_OfALightFedFirst_HasANeutralWhereAsked(RoomKind room, string cable, bool marked)
    {
        var estimate = SmallJobs.Estimate(Lamp(room, DeviceKind.SinglePoleSwitch, ControlFeed.AtLight));

        var loop = Assert.Single(estimate.Wiring.Runs, r => r.Role is RunRole.SwitchLoop);
        Assert.Equal(cable, loop.Cable.TradeName);
        var white = Assert.Single(loop.Conductors, c => c.Colour is InsulationColour.White);
        Assert.Equal((marked, marked ? ConductorFunction.Hot : ConductorFunction.Neutral), (white.ReMarked, white.Net.Function));
        Assert.All(estimate.Wiring.Circuits, c => Assert.Empty(new CircuitTester(estimate, c).Problems()));
    }

    // NEC 404.2(C) speaks of the lighting that a switch controls: a hall light from a switch in the garage asks for the neutral there.
    [Fact]
    public void SwitchLoop_IntoAGarageForAHallLight_BringsTheNeutral()
    {
        var job = Lamp(RoomKind.Hall, DeviceKind.SinglePoleSwitch, ControlFeed.AtLight);
        var hall = job.Levels[0].Rooms[0];
        var garage = new Room
        {
            Id = "G",
            Kind = RoomKind.Garage,
            Size = new RectangleSize(Length.FromFeet(16), Length.FromFeet(20)),
            At = new GridPoint(Length.Zero, Length.FromFeet(10.5m)),
            Placed = [hall.Placed[0] with { Wall = new WallSpot(1, Length.FromFeet(8)) }],
        };
        var estimate = SmallJobs.Estimate(job with { Levels = [job.Levels[0] with { Rooms = [hall with { Placed = [hall.Placed[1]] }, garage] }] });

        Assert.Equal("14/3", Assert.Single(estimate.Wiring.Runs, r => r.Role is RunRole.SwitchLoop).Cable.TradeName);
        Assert.DoesNotContain(estimate.Findings, f => f.Code == "switch-neutral");
    }

    // A sensor works on the neutral: common practice, no source.
    [Fact]
    public void SwitchLoop_ToASensorInAGarage_BringsTheNeutral()
    {
        var estimate = SmallJobs.Estimate(Lamp(RoomKind.Garage, DeviceKind.SensorSwitch, ControlFeed.AtLight));
        Assert.Equal("14/3", Assert.Single(estimate.Wiring.Runs, r => r.Role is RunRole.SwitchLoop).Cable.TradeName);
    }

    [Theory]
    [InlineData(1, 12, RunRole.SwitchLoop)]
    [InlineData(4, 3, RunRole.SwitchedLeg)]
    public void Feed_OfASwitchFarFromOrBesideThePanel_ComesInWhereItCostsLess(int wall, int feet, RunRole role)
    {
        var estimate = SmallJobs.Estimate(Lamp(RoomKind.Garage, DeviceKind.SinglePoleSwitch, null, new WallSpot(wall, Length.FromFeet(feet))));
        Assert.Contains(estimate.Wiring.Runs, r => r.Role == role);
    }

    [Fact]
    public void Feed_AtTheSwitchByHabit_HasNoSwitchLoop()
    {
        var estimate = SmallJobs.Estimate(Lamp(RoomKind.Garage, DeviceKind.SinglePoleSwitch, ControlFeed.AtSwitch));
        Assert.DoesNotContain(estimate.Wiring.Runs, r => r.Role is RunRole.SwitchLoop);
    }

    // Dividing units among circuits is a local search, so a single house may end a little dearer; houses together do not.
    [Fact]
    public void Feed_WhereItCostsLess_SavesOverManyHouses()
    {
        var costs = new (long Cheaper, long AtSwitch)[200];
        Parallel.For(0, costs.Length, n =>
        {
            var job = HouseGen.Number(n);
            costs[n] = (Cost(job, ControlFeed.Cheaper), Cost(job, ControlFeed.AtSwitch));
        });

        Assert.True(costs.Sum(c => c.Cheaper) < costs.Sum(c => c.AtSwitch));
        Assert.InRange(costs.Count(c => c.Cheaper > c.AtSwitch), 0, costs.Length / 50);
        Assert.All(costs, c => Assert.True(c.Cheaper <= c.AtSwitch * 102 / 100));
    }

    private static long Cost(Job job, ControlFeed feed) =>
        SmallJobs.Estimate(job with { Practice = job.Practice with { ControlFeed = feed } }).Wiring.PlanningCostE4;

    // The panel at the west end, the light at 3 ft, the switch on the long wall.
    private static Job Lamp(RoomKind room, DeviceKind kind, ControlFeed? feed, WallSpot? at = null) => new()
    {
        Id = "lamp",
        Name = "Lamp",
        Practice = new Practice { ControlFeed = feed },
        Levels =
        [
            new Level
            {
                Id = "L1",
                Rooms =
                [
                    new Room
                    {
                        Id = "R1", Kind = room, Size = new RectangleSize(Length.FromFeet(16), Length.FromFeet(10)), At = new GridPoint(Length.Zero, Length.Zero),
                        Placed =
                        [
                            new PlacedDevice { Id = "s", Kind = kind, Wall = at ?? new WallSpot(1, Length.FromFeet(12)) },
                            new PlacedDevice { Id = "l", Kind = DeviceKind.CeilingLight, At = new GridPoint(Length.FromFeet(3), Length.FromFeet(5)) },
                        ],
                    },
                ],
            },
        ],
        Controls = [new Control { Id = "c", Switches = ["s"], Loads = ["l"] }],
        Panels = [new Panel { Id = "P1", Room = "R1", Wall = new WallSpot(4, Length.FromFeet(5)), RatingA = Current.FromAmperes(200), Spaces = 40, Make = "m", Series = "s" }],
    };
}
