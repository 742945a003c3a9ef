using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Framing;

/// <summary>Ways over and under rooms, measured and counted by hand.</summary>
public sealed class OverheadWaysTests
{
    // Two levels of 16 by 12 ft. Below, joists run north and south at 16 in; above, east and west at 24 in. Boxes lie 12 ft apart east and 4 ft north.
    // Over the lower rooms 144 / 16 = 9 joists are crossed, over the upper ones 48 / 24 = 2, and under the upper floor those of the lower level: 9.
    // Two plates beside, wherever both boxes are on walls; between ceilings none.
    [Theory]
    [InlineData(0, false, RunWay.Overhead, 9)]
    [InlineData(1, false, RunWay.Overhead, 2)]
    [InlineData(1, true, RunWay.Underfloor, 9 + 2)]
    [InlineData(1, true, RunWay.Overhead, 2 + 2)]
    public void Bores_AcrossJoists_FollowThoseThatTheWayCrosses(int level, bool onWalls, RunWay way, int bores)
    {
        var layout = Laid(level, onWalls);
        var (a, b) = (layout.Devices[0].Place, layout.Devices[1].Place);
        Assert.Equal(bores, Bores(layout, a, b, way));
    }

    // All risers are equally far; by the one in the south-east corner the fewest joists are crossed: 24 / 16 = 1 below, 48 / 24 = 2 above, and two plates.
    [Fact]
    public void Bores_FromLevelToLevel_CountTheJoistsOfEach()
    {
        var (below, above) = (Laid(0, onWalls: false), Laid(1, onWalls: false));
        Assert.Equal(1 + 2 + 2, Bores(above, below.Devices[1].Place, above.Devices[0].Place, RunWay.Overhead));
    }

    // Two lights of a porch hang 3 ft apart, 10 ft from the house; each at its place, so that 3 ft join them and not 23 ft over the house.
    [Fact]
    public void Way_BetweenLightsOfAPorch_StaysUnderItsRoof()
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom);
        var porch = new Room
        {
            Id = "porch",
            Kind = RoomKind.Outdoors,
            Size = new RectangleSize(Length.FromFeet(16), Length.FromFeet(20)),
            At = new GridPoint(Length.Zero, Length.FromFeet(12.5m)),
            Placed = [.. new[] { 22.5m, 25.5m }.Select((y, i) => new PlacedDevice { Id = $"d{i}", Kind = DeviceKind.CeilingLight, At = new GridPoint(Length.FromFeet(8), Length.FromFeet(y)) })],
        };
        var layout = HousePlacement.Place(HouseFraming.Frame(job with { Levels = [job.Levels[0] with { Rooms = [.. job.Levels[0].Rooms, porch] }] }));
        var map = new FramingMap(layout.House);
        Assert.Equal(Length.FromFeet(3), map.PathFor(layout.Devices[0].Place, layout.Devices[1].Place, RunWay.Overhead, new PageWriter(2)).Horizontal.AsLength().Value);
    }

    private static decimal Bores(HouseLayout layout, Placement a, Placement b, RunWay way)
    {
        var map = new FramingMap(layout.House);
        Assert.True(map.TryWay(a, b, way, out var length));
        Assert.Equal(length.Bores, map.PathFor(a, b, way, new PageWriter(2)).Bores.Value);
        return length.Bores;
    }

    // Devices of one level: at 2 ft and 14 ft from the west, 4 ft and 8 ft from the south; on walls that is on the south wall and the east one.
    private static HouseLayout Laid(int level, bool onWalls)
    {
        PlacedDevice Device(string id, decimal x, decimal y, WallSpot wall) => new()
        {
            Id = id,
            Kind = onWalls ? DeviceKind.DuplexReceptacle : DeviceKind.CeilingLight,
            At = onWalls ? null : new GridPoint(Length.FromFeet(x), Length.FromFeet(y)),
            Wall = onWalls ? wall : null,
        };
        ImmutableArray<PlacedDevice> devices = [Device("d0", 2, 4, new WallSpot(4, Length.FromFeet(8))), Device("d1", 14, 8, new WallSpot(1, Length.FromFeet(12)))];
        var room = SmallJobs.OneRoom(RoomKind.Bedroom).Levels[0].Rooms[0] with { Counts = [] };
        Level Floor(int index, JoistDirection direction, decimal spacing) => new()
        {
            Id = $"L{index}",
            Elevation = Length.FromFeet(9 * index),
            Framing = new LevelFraming { JoistDirection = direction, JoistSpacing = Length.FromInches(spacing) },
            Rooms = [room with { Id = $"R{index}", Placed = index == level ? devices : [] }],
        };
        var job = SmallJobs.OneRoom(RoomKind.Bedroom) with { Levels = [Floor(0, JoistDirection.AlongY, 16), Floor(1, JoistDirection.AlongX, 24)] };
        var layout = HousePlacement.Place(HouseFraming.Frame(job with { Panels = [job.Panels[0] with { Room = "R0" }] }));
        return layout with { Devices = [.. layout.Devices.OrderBy(d => d.Id, StringComparer.Ordinal)] };
    }
}
