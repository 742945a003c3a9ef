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

    private static (FramedHouse House, Placement Placement) Placed(PlacedDevice device)
    {
        var layout = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Kitchen).With(r => r with { Placed = [device] })).Layout;
        return (layout.House, layout.Devices.Single(d => d.Id == device.Id).Place);
    }
}
