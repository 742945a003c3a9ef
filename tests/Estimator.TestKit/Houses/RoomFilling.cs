using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.TestKit.Houses;

/// <summary>Puts devices into the rooms of a random house, by number and by place.</summary>
internal static class RoomFilling
{
    internal static Room Fill(Room room, bool finishedWalls, Draw draw) => room.Kind is RoomKind.Void ? room : room with
    {
        Name = draw.Chance(50) ? $"{room.Kind} {room.Id}" : "",
        Walls = finishedWalls ? WallState.Finished : WallState.Open,
        CeilingHeight = draw.Chance(8) ? Draw.Inches(draw.Int(88, 90)) : null,
        Finished = draw.Chance(85),
        Counts = [.. Counts(room, draw).Where(c => c.Count > 0)],
        Placed = [.. Placed(room, draw)],
        Fixtures = room.Kind is RoomKind.Kitchen or RoomKind.Bathroom ? [.. Fixtures(room, draw)] : [],
    };

    /// <summary>A light of one room switched from that room and from another.</summary>
    internal static Job AcrossRooms(Job job, ImmutableArray<Room> rooms, Draw draw)
    {
        var (a, b) = (draw.Int(0, rooms.Length - 1), draw.Int(0, rooms.Length - 1));
        var added = job with
        {
            Levels = [.. job.Levels.Select(l => l with
            {
                Rooms = [.. l.Rooms.Select(r => r with
                {
                    Placed =
                    [
                        .. r.Placed,
                        .. r.Id == rooms[a].Id ? [At(r, "far-a", DeviceKind.ThreeWaySwitch, draw), InRoom(r, "far-light", DeviceKind.CeilingLight)] : Array.Empty<PlacedDevice>(),
                        .. r.Id == rooms[b].Id ? [At(r, "far-b", DeviceKind.ThreeWaySwitch, draw)] : Array.Empty<PlacedDevice>(),
                    ],
                })],
            })],
        };
        return added with { Controls = [new Control { Id = "far", Switches = ["far-a", "far-b"], Loads = ["far-light"] }] };
    }

    internal static ImmutableArray<GridPoint> Ring(Room room) => room.Size is { } size && room.At is { } at
        ? [at, new(at.X + size.Width, at.Y), new(at.X + size.Width, at.Y + size.Depth), new(at.X, at.Y + size.Depth)]
        : room.Corners;

    /// <summary>A point on a wall, a whole number of inches from a corner.</summary>
    internal static GridPoint OnWall(Room room, Draw draw)
    {
        var ring = Ring(room);
        var side = draw.Int(0, ring.Length - 1);
        var (a, b) = (ring[side], ring[(side + 1) % ring.Length]);
        var (dx, dy) = ((b.X - a.X).ToSixteenths() / 16, (b.Y - a.Y).ToSixteenths() / 16);
        var along = draw.Int(1, Math.Max(1, Math.Abs(dx + dy) - 1));
        return new GridPoint(a.X + Length.FromInches(Math.Sign(dx) * along), a.Y + Length.FromInches(Math.Sign(dy) * along));
    }

    private static IEnumerable<DeviceCount> Counts(Room room, Draw draw)
    {
        yield return Count(DeviceKind.DuplexReceptacle, draw.Int(0, room.Kind is RoomKind.Closet ? 0 : 4));
        yield return Count(DeviceKind.GfciReceptacle, draw.Chance(12) ? 1 : 0);
        yield return Count(DeviceKind.Receptacle240V, draw.Chance(3) ? 1 : 0);
        if (room.Kind is RoomKind.Kitchen)
        {
            yield return Count(DeviceKind.DuplexReceptacle, draw.Int(1, 3), ServedPlace.Counter);
            yield return Count(DeviceKind.DuplexReceptacle, draw.Chance(30) ? 1 : 0, ServedPlace.Island);
        }

        if (room.Kind is RoomKind.Bathroom)
        {
            yield return Count(DeviceKind.DuplexReceptacle, 1, ServedPlace.Basin);
            yield return Count(DeviceKind.ExhaustFan, draw.Int(0, 1));
            yield return Count(DeviceKind.WallLight, draw.Int(0, 1), ServedPlace.Basin);
        }

        yield return Count(draw.Pick(DeviceKind.CeilingLight, DeviceKind.CeilingLight, DeviceKind.RecessedLight, DeviceKind.WallLight), draw.Int(0, 3));
        yield return Count(DeviceKind.CeilingFan, draw.Chance(10) ? 1 : 0);
        yield return Count(DeviceKind.HalfHotReceptacle, draw.Chance(8) ? 1 : 0);
        yield return Count(draw.Pick(DeviceKind.SmokeAlarm, DeviceKind.CoAlarm, DeviceKind.SmokeCoAlarm), draw.Chance(35) ? 1 : 0);
        foreach (var count in Switches(draw))
        {
            yield return count;
        }
    }

    private static ImmutableArray<DeviceCount> Switches(Draw draw) => draw.Int(1, 10) switch
    {
        <= 2 => [],
        <= 6 => [Count(DeviceKind.SinglePoleSwitch, draw.Int(1, 2))],
        7 => [Count(draw.Pick(DeviceKind.Dimmer, DeviceKind.SensorSwitch), 1)],
        8 => [Count(DeviceKind.ThreeWaySwitch, 2), Count(DeviceKind.FourWaySwitch, 1)],
        _ => [Count(DeviceKind.ThreeWaySwitch, 2), Count(DeviceKind.SinglePoleSwitch, draw.Int(0, 1))],
    };

    private static IEnumerable<PlacedDevice> Placed(Room room, Draw draw)
    {
        if (!draw.Chance(25))
        {
            yield break;
        }

        yield return At(room, $"{room.Id}-p1", DeviceKind.DuplexReceptacle, draw);
        yield return At(room, $"{room.Id}-p2", draw.Pick(DeviceKind.SinglePoleSwitch, DeviceKind.GfciReceptacle, DeviceKind.WallLight), draw);
        yield return InRoom(room, $"{room.Id}-p3", draw.Pick(DeviceKind.CeilingLight, DeviceKind.RecessedLight));
    }

    private static PlacedDevice At(Room room, string id, DeviceKind kind, Draw draw) => draw.Chance(70)
        ? new PlacedDevice { Id = id, Kind = kind, At = OnWall(room, draw), Height = draw.Chance(30) ? Draw.Inches(draw.Int(10, 60)) : null }
        : new PlacedDevice { Id = id, Kind = kind, Wall = new WallSpot(draw.Int(1, 4), Draw.Inches(draw.Int(1, 30))), OwnerSupplied = draw.Chance(20) };

    // A foot from the first corner is inside each of the shapes made here.
    private static PlacedDevice InRoom(Room room, string id, DeviceKind kind) =>
        new() { Id = id, Kind = kind, At = new GridPoint(Ring(room)[0].X + Draw.Inches(12), Ring(room)[0].Y + Draw.Inches(13)) };

    private static IEnumerable<Fixture> Fixtures(Room room, Draw draw)
    {
        yield return new Fixture(FixtureKind.Sink, OnWall(room, draw));
        if (room.Kind is RoomKind.Bathroom)
        {
            yield return new Fixture(draw.Pick(FixtureKind.Shower, FixtureKind.Bathtub), OnWall(room, draw));
        }
    }

    private static DeviceCount Count(DeviceKind kind, int count, ServedPlace serves = ServedPlace.Room) => new() { Kind = kind, Count = count, Serves = serves };
}
