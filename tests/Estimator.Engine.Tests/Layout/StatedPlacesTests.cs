using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Layout;

/// <summary>What the user put somewhere stays there; what has only a usual height fits its room.</summary>
public sealed class StatedPlacesTests
{
    [Fact]
    public void PlacedReceptacle_OfAnIsland_StaysInTheRoom()
    {
        var at = new GridPoint(Length.FromFeet(8), Length.FromFeet(6));
        var place = Placed(new PlacedDevice { Id = "island", Kind = DeviceKind.DuplexReceptacle, Serves = ServedPlace.Island, At = at });
        Assert.Equal((-1, new PlanPoint(at.X.ToSixteenths(), at.Y.ToSixteenths())), (place.Placement.Side, place.House.Pose.ToGrid(place.Placement.Spot)));
    }

    [Fact]
    public void PlacedReceptacle_OfTheRoom_HangsOnTheNearestWall()
    {
        var place = Placed(new PlacedDevice { Id = "wall", Kind = DeviceKind.DuplexReceptacle, At = new GridPoint(Length.FromFeet(8), Length.FromFeet(1)) });
        Assert.Equal(new PlanPoint(Length.FromFeet(8).ToSixteenths(), 0), place.House.Pose.ToGrid(place.Placement.Spot));
    }

    // Switches hang at 48 in: common practice, no source. In a crawl space of 40 in that is above the ceiling.
    [Theory]
    [InlineData(96, 48)]
    [InlineData(54, 48)]
    [InlineData(40, 34)]
    public void Switch_OfALowRoom_HangsUnderItsCeiling(int ceilingInches, int heightInches)
    {
        var job = SmallJobs.OneRoom(RoomKind.Crawl, (DeviceKind.SinglePoleSwitch, 1), (DeviceKind.CeilingLight, 1))
            .With(r => r with { CeilingHeight = Length.FromInches(ceilingInches) });
        var device = SmallJobs.Estimate(job).Layout.Devices.Single(d => d.Kind is DeviceKind.SinglePoleSwitch);
        Assert.Equal(Length.FromInches(heightInches), device.Place.HeightFact.AsLength().Value);
    }

    [Fact]
    public void Opening_WiderThanItsWall_IsFound()
    {
        var job = SmallJobs.OneRoom(RoomKind.Family, (DeviceKind.DuplexReceptacle, 4));
        var wide = job.Levels[0].Openings[0] with { Id = "wide", Wall = null, At = new GridPoint(Length.FromFeet(8), Length.Zero), Width = Length.FromFeet(18) };
        var estimate = SmallJobs.Estimate(job with { Levels = [job.Levels[0] with { Openings = [wide] }] });
        Assert.Equal(["wide", "R1"], Assert.Single(estimate.Findings, f => f.Code == "opening-wider-than-wall").Where);
    }

    [Theory]
    [InlineData(DeviceKind.CeilingLight, Mount.Ceiling)]
    [InlineData(DeviceKind.SmokeAlarm, Mount.Wall)]
    [InlineData(DeviceKind.ExhaustFan, Mount.Wall)]
    public void PlacedOnAWall_WhatUsuallyHangsFromTheCeiling_StaysAtThatWall(DeviceKind kind, Mount mount)
    {
        var place = Placed(new PlacedDevice { Id = "x", Kind = kind, Wall = new WallSpot(1, Length.FromFeet(5)) });
        Assert.Equal((mount, new PlanPoint(Length.FromFeet(5).ToSixteenths(), 0)), (place.Placement.Mount, place.House.Pose.ToGrid(place.Placement.Spot)));
    }

    // On a wall within 12 in of the ceiling (NFPA 72, from memory), 8 in by the practice table: 96 - 8 in of an 8 ft room.
    [Theory]
    [InlineData(DeviceKind.SmokeAlarm, null, 88)]
    [InlineData(DeviceKind.ExhaustFan, null, 88)]
    [InlineData(DeviceKind.CoAlarm, 60, 60)]
    public void PlacedAlarm_OnAWall_HangsHighOrAsStated(DeviceKind kind, int? stated, int heightInches)
    {
        var device = new PlacedDevice { Id = "x", Kind = kind, Wall = new WallSpot(1, Length.FromFeet(3)), Height = stated is { } inches ? Length.FromInches(inches) : null };
        var place = Placed(device).Placement;
        Assert.Equal((Length.FromInches(heightInches), Length.FromInches(heightInches).ToSixteenths()), (place.HeightFact.AsLength().Value, place.Height));
    }

    [Theory]
    [InlineData(DeviceKind.CeilingLight, true)]
    [InlineData(DeviceKind.RecessedLight, true)]
    [InlineData(DeviceKind.CeilingFan, true)]
    [InlineData(DeviceKind.SmokeAlarm, false)]
    [InlineData(DeviceKind.WallLight, false)]
    public void Placed_OnAWallThatCannotCarryIt_IsFound(DeviceKind kind, bool found)
    {
        var job = SmallJobs.OneRoom(RoomKind.Kitchen).With(r => r with { Placed = [new PlacedDevice { Id = "high", Kind = kind, Wall = new WallSpot(1, Length.FromFeet(3)) }] });
        Assert.Equal(found ? ["high", "R1"] : [], SmallJobs.Estimate(job).Findings.Where(f => f.Code == "ceiling-device-on-wall").SelectMany(f => f.Where));
    }

    // A light hangs over the basin, a receptacle within 3 ft beside it: NEC 210.52(D) for the receptacle, common practice, no source, for the light.
    [Theory]
    [InlineData(DeviceKind.WallLight, 0)]
    [InlineData(DeviceKind.DuplexReceptacle, 18)]
    public void Counted_AtABasin_StandsWhereItServes(DeviceKind kind, int inchesBeside)
    {
        var job = SmallJobs.OneRoom(RoomKind.Bathroom).With(r => r with
        {
            Fixtures = [new Fixture(FixtureKind.Sink, new GridPoint(Length.FromFeet(8), Length.FromInches(10)))],
            Counts = [new DeviceCount { Kind = kind, Count = 1, Serves = ServedPlace.Basin }],
        });
        var layout = SmallJobs.Estimate(job).Layout;
        Assert.Equal(Length.FromInches(inchesBeside).ToSixteenths(), Math.Abs(layout.House.Pose.ToGrid(layout.Devices[0].Place.Spot).X - Length.FromFeet(8).ToSixteenths()));
    }

    [Fact]
    public void Switch_AtAnOpeningAsWideAsItsWall_StandsRoundTheCorner()
    {
        var job = SmallJobs.OneRoom(RoomKind.Family, (DeviceKind.SinglePoleSwitch, 1));
        var wide = new Opening { Id = "wide", Kind = OpeningKind.WideOpening, Room = "R1", Wall = new WallSpot(1, Length.FromFeet(8)), Width = Length.FromFeet(16) };
        var layout = SmallJobs.Estimate(job with { Levels = [job.Levels[0] with { Openings = [wide] }] }).Layout;
        var spot = layout.House.Pose.ToGrid(layout.Devices.Single().Place.Spot);
        Assert.True(spot.X == 0 || spot.X == Length.FromFeet(16).ToSixteenths());
        // 6 in from the jamb: common practice, no source.
        Assert.Equal(Length.FromInches(6).ToSixteenths(), spot.Y);
    }

    [Fact]
    public void Counter_LongerThanItsWall_GoesOnRoundBothCorners()
    {
        // 20 ft of counter about the middle of a wall of 16 ft reach 2 ft round each corner, so its first and last receptacle of ten stand 1 ft before its ends.
        var job = SmallJobs.OneRoom(RoomKind.Kitchen).With(r => r with
        {
            Counters = [new Counter { Kind = CounterKind.Wall, Length = Length.FromFeet(20), Wall = new WallSpot(3, Length.FromFeet(8)) }],
            Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 10, Serves = ServedPlace.Counter }],
        });
        var layout = SmallJobs.Estimate(job).Layout;
        var spots = layout.Devices.Select(d => layout.House.Pose.ToGrid(d.Place.Spot)).ToList();
        var feet = Length.FromFeet(1).ToSixteenths();
        Assert.Equal(8, spots.Count(s => s.Y == 12 * feet && s.X > 0 && s.X < 16 * feet));
        Assert.Equal([new PlanPoint(0, 11 * feet), new PlanPoint(16 * feet, 11 * feet)], spots.Where(s => s.Y != 12 * feet).OrderBy(s => s.X));
    }

    [Fact]
    public void Counters_WithoutAPlace_StandSideBySideAndNotInDoorways()
    {
        var job = SmallJobs.OneRoom(RoomKind.Kitchen).With(r => r with
        {
            Counters = [.. Enumerable.Repeat(new Counter { Kind = CounterKind.Wall, Length = Length.FromFeet(30) }, 2)],
            Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 12, Serves = ServedPlace.Counter }],
        });
        var layout = SmallJobs.Estimate(job).Layout;
        var door = layout.House.Openings.Single(o => o.Room == 0);
        Assert.DoesNotContain(layout.Devices, d => d.Place.Side == door.Side && d.Place.Offset > door.From && d.Place.Offset < door.To);
        Assert.Equal(12, layout.Devices.Select(d => d.Place.Spot).Distinct().Count());
    }

    private static (FramedHouse House, Placement Placement) Placed(PlacedDevice device)
    {
        var layout = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Kitchen).With(r => r with { Placed = [device] })).Layout;
        return (layout.House, layout.Devices.Single(d => d.Id == device.Id).Place);
    }
}
