using Estimator.Engine.Explanations;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Framing;

/// <summary>Holes and lengths of ways, counted by hand on small houses.</summary>
public sealed class WaysTests
{
    // From 2 ft before a corner to 2 ft behind it: 4 ft of wall cross 3 studs 16 in apart, and a corner has two studs to bore (common practice, no source).
    [Fact]
    public void AlongWalls_RoundOneCorner_BoresItsStuds()
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom).With(r => r with
        {
            Placed =
            [
                new PlacedDevice { Id = "a", Kind = DeviceKind.DuplexReceptacle, Wall = new WallSpot(1, Length.FromFeet(14)) },
                new PlacedDevice { Id = "b", Kind = DeviceKind.DuplexReceptacle, Wall = new WallSpot(2, Length.FromFeet(2)) },
            ],
        });
        var path = Between(SmallJobs.Estimate(job), "a", "b", RunWay.AlongWalls);
        Assert.Equal((4m, 5m), (path.Horizontal.AsLength().Value.ToFeet(), path.Bores.Value));
    }

    // Straight through a wall 6 in thick into the next room: the turns stand square to the wall, so their legs add up to what was measured.
    [Fact]
    public void AlongWalls_ThroughAWall_TurnsSquareToIt()
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom);
        var second = job.Levels[0].Rooms[0] with { Id = "R2", At = new GridPoint(Length.FromInches(16 * 12 + 6), Length.Zero) };
        PlacedDevice Receptacle(string id, int side, int feet) => new() { Id = id, Kind = DeviceKind.DuplexReceptacle, Wall = new WallSpot(side, Length.FromFeet(feet)) };
        job = job with { Levels = [job.Levels[0] with { Rooms = [job.Levels[0].Rooms[0] with { Placed = [Receptacle("a", 2, 3)] }, second with { Placed = [Receptacle("b", 4, 4)] }] }] };
        var path = Between(SmallJobs.Estimate(job), "a", "b", RunWay.AlongWalls);
        Assert.Equal(Length.FromInches(5 * 12 + 6), path.Horizontal.AsLength().Value);
        Assert.All(path.Turns.Zip(path.Turns.Skip(1)), t => Assert.True(t.First.Spot.X == t.Second.Spot.X || t.First.Spot.Y == t.Second.Spot.Y));
    }

    // Under the upper floor lie the lower level's joists: 12 in apart there, 24 in above. A way of 10 ft across them meets ten, and two plates.
    [Theory]
    [InlineData(JoistDirection.AlongY, 12)]
    [InlineData(JoistDirection.AlongX, 2)]
    public void Underfloor_OfAnUpperLevel_BoresTheJoistsBelow(JoistDirection below, int bores)
    {
        var level = SmallJobs.OneRoom(RoomKind.Bedroom).Levels[0];
        PlacedDevice Receptacle(string id, int feet) => new() { Id = id, Kind = DeviceKind.DuplexReceptacle, Wall = new WallSpot(1, Length.FromFeet(feet)) };
        var job = SmallJobs.OneRoom(RoomKind.Bedroom) with
        {
            Levels =
            [
                level with { Framing = new LevelFraming { JoistSpacing = Length.FromInches(12), JoistDirection = below } },
                level with
                {
                    Id = "L2", Elevation = Length.FromFeet(9), Openings = [], Framing = new LevelFraming { JoistSpacing = Length.FromInches(24), JoistDirection = JoistDirection.AlongX },
                    Rooms = [level.Rooms[0] with { Id = "R2", Placed = [Receptacle("a", 2), Receptacle("b", 12)] }],
                },
            ],
        };
        Assert.Equal(bores, Between(SmallJobs.Estimate(job), "a", "b", RunWay.Underfloor).Bores.Value);
    }

    [Fact]
    public void Area_OfARoomWithAHole_FollowsFromItsCorners()
    {
        GridPoint At(int x, int y) => new(Length.FromFeet(x), Length.FromFeet(y));
        var job = SmallJobs.OneRoom(RoomKind.Living, (DeviceKind.DuplexReceptacle, 2)).With(r => r with { Size = null, At = null, Corners = [At(0, 0), At(16, 0), At(16, 12), At(0, 12)], Holes = [[At(5, 5), At(8, 5), At(8, 7), At(5, 7)]] });
        var estimate = SmallJobs.Estimate(job);
        var area = estimate.House.Rooms[0].AreaSquareFeet;
        Assert.Equal(16 * 12 - 3 * 2, area.Value);
        Assert.Contains("$.levels[0].rooms[0].holes[0][2][1]", Rules(estimate.Book, area.Node));
    }

    private static IEnumerable<string> Rules(ExplanationBook book, NodeRef at) => book[at] is var node && node.Inputs.IsEmpty ? [node.Rule] : node.Inputs.SelectMany(i => Rules(book, i));

    private static RunPath Between(JobEstimate estimate, string a, string b, RunWay way)
    {
        Placement Place(string id) => estimate.Layout.Devices.Single(d => d.Id == id).Place;
        return new FramingMap(estimate.House).PathFor(Place(a), Place(b), way, new PageWriter(999));
    }
}
