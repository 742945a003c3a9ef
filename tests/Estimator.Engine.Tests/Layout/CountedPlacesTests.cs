using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Layout;

/// <summary>Where things stand of which the user gave only a number, as an electrician would put them: common practice, no source. Points are inches from the room's south-west corner.</summary>
public sealed class CountedPlacesTests
{
    // Basins 60 and 132 in from the corner, on the north wall of a room 192 by 144 in; listed from either end of the wall, as the canonical pose has it.
    [Theory]
    [InlineData(1, "60", "132")]
    [InlineData(2, "60 132", "60 132")]
    [InlineData(3, "42 78 132", "60 114 150")]
    public void LightsOfBasins_HangOverThem(int count, string inches, string fromTheOtherEnd)
    {
        var places = Places(Bathroom(DeviceKind.WallLight, count), DeviceKind.WallLight);
        Assert.All(places, p => Assert.Equal(144, p.Y));
        Assert.Contains(string.Join(' ', places.Select(p => p.X).Order()), (string[])[inches, fromTheOtherEnd]);
    }

    // 18 in from the middle of a basin, within the 36 in of 210.52(D).
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void ReceptaclesOfBasins_StandBesideThem(int count)
    {
        var places = Places(Bathroom(DeviceKind.DuplexReceptacle, count), DeviceKind.DuplexReceptacle);
        Assert.Equal(count, places.Select(p => new[] { 60, 132 }.Single(b => Math.Abs(b - p.X) == 18)).Distinct().Count());
    }

    // A passage 4 ft wide whose whole end is open: no wall beside the opening, so the switch stands 6 in round the corner.
    [Fact]
    public void Switch_OfAnOpeningAsWideAsItsWall_StandsRoundTheCorner()
    {
        var job = SmallJobs.OneRoom(RoomKind.Hall, (DeviceKind.SinglePoleSwitch, 1)).With(r => r with { Size = new RectangleSize(Length.FromFeet(4), Length.FromFeet(12)) });
        var opening = new Opening { Id = "end", Kind = OpeningKind.WideOpening, Room = "R1", Wall = new WallSpot(1, Length.FromFeet(2)), Width = Length.FromFeet(4) };
        var spot = Assert.Single(Places(job with { Levels = [job.Levels[0] with { Openings = [opening] }] }, DeviceKind.SinglePoleSwitch));
        Assert.Equal(6, spot.Y);
        Assert.True(spot.X is 0 or 48, $"{spot}");
    }

    // The wall but for a door of 32 in is 53 ft 4 in long; a counter of 60 ft takes just that, and none of its 40 receptacles stands in the doorway.
    [Fact]
    public void Counter_WithoutAPlace_LeavesDoorwaysFree()
    {
        var places = Places(Kitchen(new Counter { Kind = CounterKind.Wall, Length = Length.FromFeet(60) }, 40), DeviceKind.DuplexReceptacle);
        Assert.Equal(40, places.Length);
        Assert.DoesNotContain(places, p => p.Y == 0 && p.X is > 56 and < 88);
    }

    private static Job Bathroom(DeviceKind kind, int count) => SmallJobs.OneRoom(RoomKind.Bathroom).With(r => r with
    {
        Counts = [new DeviceCount { Kind = kind, Count = count, Serves = ServedPlace.Basin }],
        Fixtures = [.. new[] { 60, 132 }.Select(x => new Fixture(FixtureKind.Sink, new GridPoint(Length.FromInches(x), Length.FromInches(134))))],
    });

    private static Job Kitchen(Counter counter, int receptacles) => SmallJobs.OneRoom(RoomKind.Kitchen).With(r => r with
    {
        Counters = [counter],
        Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = receptacles, Serves = ServedPlace.Counter }],
    });

    private static ImmutableArray<(int X, int Y)> Places(Job job, DeviceKind kind)
    {
        var estimate = SmallJobs.Estimate(job);
        return [.. estimate.Layout.Devices.Where(d => d.Kind == kind).Select(d => estimate.House.Pose.ToGrid(d.Place.Spot)).Select(p => (p.X / 16, p.Y / 16))];
    }
}
