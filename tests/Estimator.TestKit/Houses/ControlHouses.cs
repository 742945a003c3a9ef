using System.Collections.Immutable;
using CsCheck;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.TestKit.Houses;

/// <summary>Random houses of two levels whose rooms are full of controls: one to six switches each, acting on lights, fans, halves of receptacles, in one room or over several.</summary>
public static class ControlHouses
{
    private const ulong Sweep = 404;
    private const int Rooms = 6;
    private static readonly int Wide = 12 * 14;

    /// <summary>House of a number.</summary>
    /// <param name="number">The same number gives the same house.</param>
    /// <param name="controls">How many controls it has.</param>
    public static Job Number(int number, int controls)
    {
        var draw = new Draw(new PCG((uint)number, Sweep));
        var placed = Enumerable.Range(0, Rooms).Select(_ => new List<PlacedDevice>()).ToArray();
        var stated = Enumerable.Range(1, controls).Select(c => Control($"c{c}", placed, draw)).ToImmutableArray();
        return new Job
        {
            Id = "controls",
            Name = "Controls",
            Levels = [.. Enumerable.Range(0, 2).Select(l => Level(l, placed, draw))],
            Controls = stated,
            Practice = new Practice { MixLightsAndReceptacles = draw.Chance(50), GroundFaultBy = draw.Pick(GroundFaultBy.Breaker, GroundFaultBy.FirstReceptacle) },
            Panels = [new Panel { Id = "P1", Room = "R1", Wall = new WallSpot(4, Length.FromFeet(1)), RatingA = Current.FromAmperes(200), Spaces = 60, Make = "m", Series = "s" }],
        };
    }

    private static Level Level(int index, List<PlacedDevice>[] placed, Draw draw) => new()
    {
        Id = $"L{index + 1}",
        Elevation = Length.FromFeet(9 * index),
        Rooms = [.. Enumerable.Range(0, Rooms / 2).Select(i => Room(index * Rooms / 2 + i, i, placed, draw))],
    };

    private static Room Room(int number, int column, List<PlacedDevice>[] placed, Draw draw) => new()
    {
        Id = $"R{number + 1}",
        Kind = draw.Pick(RoomKind.Bedroom, RoomKind.Hall, RoomKind.Living, RoomKind.Garage),
        Size = new RectangleSize(Length.FromInches(Wide), Length.FromFeet(12)),
        At = new GridPoint(Length.FromInches(column * (Wide + 6)), Length.Zero),
        Placed = [.. placed[number]],
        Counts =
        [
            new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = draw.Int(0, 2) },
            new DeviceCount { Kind = DeviceKind.GfciReceptacle, Count = draw.Chance(20) ? 1 : 0 },
            new DeviceCount { Kind = DeviceKind.SmokeAlarm, Count = draw.Int(0, 1) },
        ],
    };

    private static Control Control(string id, List<PlacedDevice>[] placed, Draw draw)
    {
        var switches = draw.Chance(40) ? 1 : draw.Int(2, 6);
        var home = draw.Int(0, Rooms - 1);
        string Put(string name, DeviceKind kind, int room, bool wall)
        {
            placed[room].Add(wall
                ? new PlacedDevice { Id = $"{id}-{name}", Kind = kind, Wall = new WallSpot(draw.Int(1, 4), Draw.Inches(draw.Int(6, 130))) }
                : new PlacedDevice { Id = $"{id}-{name}", Kind = kind, At = new GridPoint(Draw.Inches(room % (Rooms / 2) * (Wide + 6) + draw.Int(20, 140)), Draw.Inches(draw.Int(20, 120))) });
            return $"{id}-{name}";
        }

        int Somewhere() => draw.Chance(70) ? home : draw.Int(0, Rooms - 1);
        var kinds = switches == 1
            ? [draw.Pick(DeviceKind.SinglePoleSwitch, DeviceKind.SinglePoleSwitch, DeviceKind.Dimmer, DeviceKind.SensorSwitch, DeviceKind.ThreeWaySwitch)]
            : Enumerable.Repeat(DeviceKind.FourWaySwitch, switches - 2).Append(DeviceKind.ThreeWaySwitch).Append(DeviceKind.ThreeWaySwitch).ToList();
        var ids = kinds.Select((k, i) => Put($"s{i}", k, Somewhere(), wall: true)).ToImmutableArray();
        var loads = Enumerable.Range(0, draw.Int(1, 3)).Select(i => draw.Int(1, 10) switch
        {
            <= 4 => Put($"l{i}", DeviceKind.CeilingLight, Somewhere(), wall: false),
            <= 6 => Put($"l{i}", DeviceKind.RecessedLight, Somewhere(), wall: false),
            7 => Put($"l{i}", DeviceKind.WallLight, Somewhere(), wall: true),
            8 => Put($"l{i}", DeviceKind.HalfHotReceptacle, Somewhere(), wall: true),
            9 => Put($"l{i}", DeviceKind.CeilingFan, Somewhere(), wall: false) + draw.Pick("#fan", "#light", ""),
            _ => Put($"l{i}", DeviceKind.ExhaustFan, Somewhere(), wall: false),
        }).ToImmutableArray();
        return new Control { Id = id, Switches = ids, Loads = loads };
    }
}
