using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.TestKit.Houses;

/// <summary>Puts panels and equipment into a random house.</summary>
internal static class PanelGen
{
    internal static IEnumerable<Panel> Panels(ImmutableArray<Room> rooms, Draw draw)
    {
        var (existing, sub) = (draw.Chance(35), draw.Chance(14));
        yield return new Panel
        {
            Id = "P1",
            Room = rooms[0].Id,
            At = draw.Chance(60) ? RoomFilling.OnWall(rooms[0], draw) : null,
            RatingA = Current.FromAmperes(draw.Pick(100, 125, 200)),
            Spaces = existing ? draw.Int(20, 30) : 40,
            TandemSpaces = draw.Chance(20) ? 6 : 0,
            Existing = existing,
            Make = draw.Chance(50) ? "A make" : null,
            Circuits = existing || draw.Chance(10) ? [.. Enumerable.Range(1, draw.Int(8, 16)).Select(i => Old(i, sub, draw))] : [],
            NoNewCircuits = sub && draw.Chance(50),
        };
        if (sub)
        {
            var room = rooms[^1];
            yield return new Panel { Id = "P2", Room = room.Id, At = RoomFilling.OnWall(room, draw), RatingA = Current.FromAmperes(draw.Pick(60, 100, 125)), Spaces = 12, FedFrom = "P1", Existing = draw.Chance(15) };
        }
    }

    internal static IEnumerable<Equipment> Equipment(ImmutableArray<Room> rooms, Draw draw)
    {
        var pieces = draw.Pick(0, 0, 1, 1, 2, 3);
        for (var i = 1; i <= pieces; i++)
        {
            var room = rooms[draw.Int(0, rooms.Length - 1)];
            var kind = (EquipmentKind)draw.Int((int)EquipmentKind.Range, (int)EquipmentKind.Other);
            yield return new Equipment
            {
                Id = $"E{i}",
                Kind = kind,
                Room = room.Id,
                At = draw.Chance(50) ? RoomFilling.OnWall(room, draw) : null,
                LoadVa = draw.Chance(25) ? Power.FromVoltAmperes(draw.Int(4, 40) * 100) : null,
                MinimumCircuitAmpacityA = kind is EquipmentKind.HeatPump or EquipmentKind.AirConditioner ? Current.FromAmperes(draw.Int(12, 30)) : null,
                MaximumOvercurrentDeviceA = kind is EquipmentKind.HeatPump or EquipmentKind.AirConditioner ? Current.FromAmperes(40) : null,
            };
        }
    }

    internal static ServiceWork? Service(Draw draw) => !draw.Chance(12) ? null : new ServiceWork
    {
        RatingA = draw.Chance(50) ? Current.FromAmperes(draw.Pick(100, 150, 200, 400)) : null,
        Entrance = draw.Chance(50) ? ServiceEntrance.Overhead : ServiceEntrance.Underground,
        Metal = draw.Chance(30) ? ConductorMetal.Copper : ConductorMetal.Aluminium,
        ConcreteEncased = draw.Chance(40),
        WaterPipe = draw.Chance(40),
        Replaces = draw.Chance(50),
        TemporaryPower = draw.Chance(20),
    };

    private static ExistingCircuit Old(int number, bool sub, Draw draw) => new()
    {
        Id = $"old-{number}",
        BreakerA = Current.FromAmperes(draw.Pick(15, 20, 30)),
        Poles = draw.Chance(20) ? 2 : 1,
        LoadVa = draw.Chance(50) ? Power.FromVoltAmperes(900) : null,
        Space = draw.Chance(40) ? draw.Int(1, 20) : null,
        NewTandem = draw.Chance(10),
        MovedTo = sub && draw.Chance(15) ? "P2" : null,
    };
}
