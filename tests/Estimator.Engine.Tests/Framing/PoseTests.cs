using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Engine.Tests.Framing;

/// <summary>A square room looks alike from eight sides: what stands in it decides how the house lies, and the same house mirrored or turned needs the same.</summary>
public sealed class PoseTests
{
    private static readonly WallSpot Off = new(2, Length.FromFeet(3));

    public static TheoryData<string> Things => ["device", "equipment", "panel", "counter", "joists"];

    [Theory]
    [MemberData(nameof(Things))]
    public void SquareRoom_WithOneThingOffItsMiddle_NeedsTheSameHoweverItLies(string thing)
    {
        var job = Square(thing);
        var expected = Quantities(job);
        foreach (var turned in new[] { JobTransforms.Turned(job), JobTransforms.Turned(JobTransforms.Turned(job)), JobTransforms.Mirrored(job), JobTransforms.Turned(JobTransforms.Mirrored(job)) })
        {
            Assert.Equal(expected, Quantities(turned));
        }
    }

    private static Job Square(string thing)
    {
        var job = SmallJobs.OneRoom(RoomKind.Kitchen, (DeviceKind.DuplexReceptacle, 5), (DeviceKind.SinglePoleSwitch, 1), (DeviceKind.CeilingLight, 3));
        var room = job.Levels[0].Rooms[0] with { Size = new RectangleSize(Length.FromFeet(12), Length.FromFeet(12)) };
        room = thing switch
        {
            "device" => room with { Placed = [new PlacedDevice { Id = "d", Kind = DeviceKind.DuplexReceptacle, Wall = Off }] },
            "counter" => room with
            {
                Counters = [new Counter { Kind = CounterKind.Wall, Length = Length.FromFeet(4), Wall = Off }],
                Counts = [.. room.Counts, new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 2, Serves = ServedPlace.Counter }],
            },
            _ => room,
        };
        return job with
        {
            Levels = [job.Levels[0] with { Rooms = [room], Openings = [], Framing = new LevelFraming { JoistDirection = thing == "joists" ? JoistDirection.AlongX : JoistDirection.ShorterSpan } }],
            Panels = [job.Panels[0] with { Wall = thing == "panel" ? Off : new WallSpot(1, Length.FromFeet(6)) }],
            Equipment = thing == "equipment" ? [new Equipment { Id = "e", Kind = EquipmentKind.Disposal, Room = "R1", Wall = Off }] : [],
        };
    }

    private static string Quantities(Job job)
    {
        var estimate = SmallJobs.Estimate(job);
        return string.Join('\n', estimate.Takeoff.Lines.Select(l => $"{l.ItemId} {l.Quantity.Value}").Append($"{estimate.Bid.Price.Value}"));
    }
}
