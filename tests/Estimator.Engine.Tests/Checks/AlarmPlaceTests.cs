using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Checks;

/// <summary>A smoke alarm hangs 3 ft or more from the door of a bath with tub or shower. Source: IRC R314.3.</summary>
public sealed class AlarmPlaceTests
{
    // The door of the bath stands in the north wall of the hall, 8 ft along it: at x = 8 ft, y = 12 ft.
    [Theory]
    [InlineData(8, 10, true, true)]
    [InlineData(8, 8, true, false)]
    [InlineData(8, 10, false, false)]
    public void Alarm_NearTheDoorOfABath_IsFound(int x, int y, bool tub, bool found)
    {
        var job = SmallJobs.OneRoom(RoomKind.Hall).With(r => r with { Placed = [new PlacedDevice { Id = "alarm", Kind = DeviceKind.SmokeAlarm, At = new GridPoint(Length.FromFeet(x), Length.FromFeet(y)) }] });
        var bath = new Room
        {
            Id = "bath",
            Kind = RoomKind.Bathroom,
            Size = new RectangleSize(Length.FromFeet(16), Length.FromFeet(8)),
            At = new GridPoint(Length.Zero, Length.FromInches(149)),
            Fixtures = [new Fixture(tub ? FixtureKind.Bathtub : FixtureKind.Toilet)],
        };
        var door = new Opening { Id = "d2", Kind = OpeningKind.Door, Room = "R1", OtherRoom = "bath", Wall = new WallSpot(3, Length.FromFeet(8)), Width = Length.FromInches(30) };
        job = job with { Levels = [job.Levels[0] with { Rooms = [.. job.Levels[0].Rooms, bath], Openings = [.. job.Levels[0].Openings, door] }] };
        Assert.Equal(found, SmallJobs.Estimate(job).Findings.Any(f => f.Code == "alarm-near-bath" && f.Severity is Severity.Mandatory));
    }
}
