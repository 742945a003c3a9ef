using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.TestKit.Editions;

/// <summary>The parts that situations are made of.</summary>
public static partial class Situations
{
    private static Job Room(RoomKind kind, params ReadOnlySpan<(DeviceKind Kind, int Count, ServedPlace Serves)> counts)
    {
        var devices = counts.ToArray().Select(c => new DeviceCount { Kind = c.Kind, Count = c.Count, Serves = c.Serves }).ToList();
        return SmallJobs.OneRoom(kind).With(r => r with { Counts = [.. devices] });
    }

    private static Job Kitchen(Counter? counter, params ReadOnlySpan<(DeviceKind Kind, int Count, ServedPlace Serves)> counts) =>
        Room(RoomKind.Kitchen, counts).With(r => r with { Counters = counter is null ? [] : [counter] });

    private static Counter Island(decimal lengthFt, decimal depthFt) => new() { Kind = CounterKind.Island, Length = Length.FromFeet(lengthFt), Depth = Length.FromFeet(depthFt) };

    // Its middle stands 8 ft along the north wall.
    private static Counter Counter(decimal lengthFt) => new() { Kind = CounterKind.Wall, Length = Length.FromFeet(lengthFt), Wall = new WallSpot(3, Length.FromFeet(8)) };

    private static Fixture Fixture(FixtureKind kind, decimal x, decimal y) => new(kind, new GridPoint(Length.FromFeet(x), Length.FromFeet(y)));

    // A tub lies at the north wall, its middle 12 ft east and 15 in from that wall, which is 4 ft along it.
    private static Job Tub(PlacedDevice device) => Room(RoomKind.Bathroom).With(r => r with { Fixtures = [Fixture(FixtureKind.Bathtub, 12, 10.75m)], Placed = [device] });

    private static PlacedDevice OnWall(string id, DeviceKind kind, int side, decimal offsetFt, decimal heightIn, ServedPlace serves = ServedPlace.Room) =>
        new() { Id = id, Kind = kind, Serves = serves, Wall = new WallSpot(side, Length.FromFeet(offsetFt)), Height = Length.FromInches(heightIn) };

    private static PlacedDevice At(string id, DeviceKind kind, decimal x, decimal y, decimal? heightIn, ServedPlace serves = ServedPlace.Room) =>
        new() { Id = id, Kind = kind, Serves = serves, At = new GridPoint(Length.FromFeet(x), Length.FromFeet(y)), Height = heightIn is { } h ? Length.FromInches(h) : null };

    private static Job Equipped(Job job, EquipmentKind kind, Func<Equipment, Equipment>? change = null)
    {
        var equipment = new Equipment { Id = "unit", Kind = kind, Room = "R1" };
        return job with { Equipment = [change is null ? equipment : change(equipment)] };
    }

    private static Job Pinned(Job job, int breakerA) =>
        job with { Pins = new Pins { Circuits = [new PinnedCircuit { Id = "own", Panel = "P1", BreakerA = Current.FromAmperes(breakerA), Outlets = ["unit"] }] } };

    private static Job Service(ServiceWork? work) => Room(RoomKind.Utility) is var job
        ? job with { Panels = [job.Panels[0] with { Existing = false }], Service = work }
        : job;

    // The equipment stands in a room beside the panel's.
    private static Job Apart(EquipmentKind kind, DisconnectPlace? disconnect, Func<Equipment, Equipment>? change = null)
    {
        var job = Equipped(Room(RoomKind.Utility), kind, e => (change is null ? e : change(e)) with { Room = "apart", Connection = Connection.HardWired, Disconnect = disconnect });
        return job with { Levels = [job.Levels[0] with { Rooms = [.. job.Levels[0].Rooms, Rectangle("apart", RoomKind.Garage, 16.4m, 0, 16, 12)] }] };
    }

    // A subpanel of 60 A at the far end of a long room, and a charger of 9600 VA beside it.
    private static Job Subpanel(int feet)
    {
        var job = Apart(EquipmentKind.EvCharger, DisconnectPlace.WithinSight, e => e with { LoadVa = Power.FromVoltAmperes(9600), Wall = new WallSpot(2, Length.FromFeet(3)) });
        var rooms = job.Levels[0].Rooms.Select(r => r.Id == "apart" ? r with { Size = new RectangleSize(Length.FromFeet(feet), Length.FromFeet(12)) } : r);
        return job with
        {
            Levels = [job.Levels[0] with { Rooms = [.. rooms] }],
            Panels = [.. job.Panels, new Panel { Id = "P2", Room = "apart", Wall = new WallSpot(2, Length.FromFeet(6)), RatingA = Current.FromAmperes(60), Spaces = 12, FedFrom = "P1" }],
        };
    }

    // 16 ft by 40 in, its door in the south wall: the light in the middle hangs 20 in from the wall behind it.
    private static Job Closet(DeviceKind light) => Room(RoomKind.Closet).With(r => r with
    {
        Size = new RectangleSize(Length.FromFeet(16), Length.FromInches(40)),
        Placed = [new PlacedDevice { Id = "light", Kind = light, At = new GridPoint(Length.FromFeet(8), Length.FromInches(20)) }],
    });

    private static Job Old(UnknownTopic topic, int? allowance) => Room(RoomKind.Bedroom) with
    {
        Unknowns = [new Unknown { Id = "old", Topic = topic, Room = "R1", Allowance = allowance is { } dollars ? Money.FromDollars(dollars) : null }],
    };

    private static Room Rectangle(string id, RoomKind kind, decimal x, decimal y, decimal width, decimal depth, params ReadOnlySpan<DeviceCount> counts) => new()
    {
        Id = id,
        Kind = kind,
        Size = new RectangleSize(Length.FromFeet(width), Length.FromFeet(depth)),
        At = new GridPoint(Length.FromFeet(x), Length.FromFeet(y)),
        Counts = [.. counts],
    };

    private static DeviceCount Count(DeviceKind kind, int count = 1, ServedPlace serves = ServedPlace.Room) => new() { Kind = kind, Count = count, Serves = serves };

    private static Opening Door(string id, OpeningKind kind, string room, string? other, int side, decimal offsetFt) =>
        new() { Id = id, Kind = kind, Room = room, OtherRoom = other, Wall = new WallSpot(side, Length.FromFeet(offsetFt)), Width = Length.FromFeet(3) };

    private static Job Deck()
    {
        var job = Room(RoomKind.Living);
        return job with { Levels = [job.Levels[0] with { Rooms = [.. job.Levels[0].Rooms, Rectangle("deck", RoomKind.Outdoors, 0, 12, 16, 8)], Openings = [] }] };
    }

    private static Job GarageBeside()
    {
        var job = Room(RoomKind.Bedroom, (DeviceKind.SmokeAlarm, 1, ServedPlace.Room));
        var level = job.Levels[0] with
        {
            Rooms = [.. job.Levels[0].Rooms, Rectangle("hall", RoomKind.Hall, 16.4m, 0, 4, 12, Count(DeviceKind.SmokeAlarm)), Rectangle("garage", RoomKind.Garage, 20.8m, 0, 20, 12)],
            Openings = [Door("d1", OpeningKind.Door, "R1", "hall", 2, 3), Door("d2", OpeningKind.Door, "hall", "garage", 2, 3)],
        };
        return job with { Levels = [level] };
    }

    private static Job Stair(bool above, bool dimmer)
    {
        var job = Room(RoomKind.Living);
        var lower = job.Levels[0] with { Rooms = [.. job.Levels[0].Rooms, Rectangle("stair", RoomKind.Stair, 16.4m, 0, 4, 12, Count(DeviceKind.CeilingLight), Count(dimmer ? DeviceKind.Dimmer : DeviceKind.ThreeWaySwitch, above ? 1 : 2))], Openings = [Door("d1", OpeningKind.WideOpening, "R1", "stair", 2, 3)] };
        var upper = new Level
        {
            Id = "L2",
            Elevation = Length.FromFeet(9),
            Rooms = [Rectangle("bed", RoomKind.Bedroom, 0, 0, 16, 12), Rectangle("landing", RoomKind.Hall, 16.4m, 0, 4, 12, Count(DeviceKind.ThreeWaySwitch, above ? 1 : 0))],
        };
        var first = dimmer ? "stair/dimmer-1" : "stair/three_way_switch-1";
        return job with
        {
            Levels = [lower, upper],
            Controls = [new Control { Id = "c", Switches = [first, above ? "landing/three_way_switch-1" : "stair/three_way_switch-2"], Loads = ["stair/ceiling_light-1"] }],
        };
    }

    // A building of one room 24 ft east of the house.
    private static Job Detached(RoomKind kind, params ReadOnlySpan<DeviceCount> counts)
    {
        var job = Room(RoomKind.Living, (DeviceKind.CeilingLight, 1, ServedPlace.Room), (DeviceKind.SinglePoleSwitch, 1, ServedPlace.Room));
        return job with
        {
            Buildings = [new Building { Id = "B1", Name = "Building" }],
            Levels = [job.Levels[0] with { Rooms = [.. job.Levels[0].Rooms, Rectangle("apart", kind, 40, 0, 16, 12, counts) with { Building = "B1" }] }],
        };
    }

    private static Job WithPanel(Job job, int ratingA) => job with
    {
        Panels = [.. job.Panels, new Panel { Id = "P2", Room = "apart", Wall = new WallSpot(2, Length.FromFeet(6)), RatingA = Current.FromAmperes(ratingA), Spaces = 12, FedFrom = "P1" }],
    };

    // A new dwelling of a kitchen in the south and a living room in the north, a door to the outside in each.
    private static Job House(bool back)
    {
        var job = Room(RoomKind.Kitchen, (DeviceKind.DuplexReceptacle, 1, ServedPlace.Outdoors));
        var level = job.Levels[0] with
        {
            Rooms = [.. job.Levels[0].Rooms, Rectangle("living", RoomKind.Living, 0, 12.4m, 16, 12, Count(DeviceKind.DuplexReceptacle, back ? 1 : 0, ServedPlace.Outdoors))],
            Openings = [Door("front", OpeningKind.EntranceDoor, "R1", null, 1, 6), Door("through", OpeningKind.Door, "R1", "living", 3, 6), Door("rear", OpeningKind.SlidingDoor, "living", null, 3, 6)],
        };
        return job with { Levels = [level], Panels = [job.Panels[0] with { Existing = false }] };
    }
}
