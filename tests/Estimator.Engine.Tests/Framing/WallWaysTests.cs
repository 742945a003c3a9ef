using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Framing;

/// <summary>Ways along walls, measured and counted by hand.</summary>
public sealed class WallWaysTests
{
    // Room 16 by 12 ft, studs 16 in apart, two studs bored at a corner (common practice, no source). From 3 ft before a corner: 36 in / 16 are two studs;
    // 5 ft after it make 96 / 16 = 6 and the corner's 2; over a whole wall of 12 ft and 3 ft on either side, 216 / 16 = 13 and 4 of two corners.
    [Theory]
    [InlineData(2, 1, 2, 4, 36, 2)]
    [InlineData(2, 9, 3, 5, 96, 6 + 2)]
    [InlineData(3, 5, 2, 9, 96, 6 + 2)]
    [InlineData(3, 3, 1, 13, 216, 13 + 4)]
    [InlineData(1, 13, 3, 3, 216, 13 + 4)]
    public void Bores_OfAWayRoundCorners_CountEveryCorner(int side, int feet, int otherSide, int otherFeet, int inches, int bores)
    {
        var layout = Laid(Rectangle(), new WallSpot(side, Length.FromFeet(feet)), new WallSpot(otherSide, Length.FromFeet(otherFeet)));
        var (a, b) = (layout.Devices[0].Place, layout.Devices[1].Place);
        var map = new FramingMap(layout.House);
        Assert.True(map.TryWay(a, b, RunWay.AlongWalls, out var length));
        Assert.Equal((Length.FromInches(inches).ToSixteenths(), bores), (length.Horizontal, length.Bores));
        Assert.Equal(bores, map.PathFor(a, b, RunWay.AlongWalls, new PageWriter(2)).Bores.Value);
    }

    // Two rooms whose shared wall runs 3 in sideways over 7 ft. The second room's corners face points of the first one's wall between sixteenths of an
    // inch: what counts is the nearest sixteenth, worked out here from the two ends of the wall.
    [Fact]
    public void Turns_OnASlantingWall_LieOnTheNearestSixteenth()
    {
        var rooms = ImmutableArray.Create(
            Room("R1", (0, 0), (120, 0), (123, 84), (0, 84)),
            Room("R2", (123, 20), (240, 20), (240, 80), (125, 80)));
        var layout = Laid(rooms, new WallSpot(1, Length.FromFeet(5)), new WallSpot(2, Length.FromFeet(2)));
        var path = new FramingMap(layout.House).PathFor(layout.Devices[0].Place, layout.Devices[1].Place, RunWay.AlongWalls, new PageWriter(2));
        var slanting = path.Turns.Select(t => layout.House.Pose.ToGrid(t.Spot)).Where(p => p.X > 120 * 16 && p.X < 123 * 16).ToList();
        Assert.NotEmpty(slanting);
        Assert.All(slanting, p => Assert.Equal(120m * 16 + decimal.Round(p.Y * 3m / 84m, MidpointRounding.AwayFromZero), p.X));
    }

    private static HouseLayout Laid(ImmutableArray<Room> rooms, WallSpot first, WallSpot second)
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom);
        ImmutableArray<Room> placed = [.. rooms.Select((r, i) => r with
        {
            Placed = [.. new[] { (Room: 0, Spot: first), (Room: rooms.Length - 1, Spot: second) }.Select((s, n) => (s.Room, Device: new PlacedDevice { Id = $"d{n}", Kind = DeviceKind.DuplexReceptacle, Wall = s.Spot }))
                .Where(s => s.Room == i).Select(s => s.Device)],
        })];
        var house = HouseFraming.Frame(job with { Levels = [job.Levels[0] with { Rooms = placed, Openings = [] }] });
        var layout = HousePlacement.Place(house);
        return layout with { Devices = [.. layout.Devices.OrderBy(d => d.Id, StringComparer.Ordinal)] };
    }

    private static ImmutableArray<Room> Rectangle() => SmallJobs.OneRoom(RoomKind.Bedroom).Levels[0].Rooms;

    private static Room Room(string id, params ReadOnlySpan<(int X, int Y)> corners) => new()
    {
        Id = id,
        Kind = RoomKind.Bedroom,
        Corners = [.. corners.ToArray().Select(c => new GridPoint(Length.FromInches(c.X), Length.FromInches(c.Y)))],
    };
}
