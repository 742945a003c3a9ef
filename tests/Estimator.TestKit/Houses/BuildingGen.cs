using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.TestKit.Houses;

/// <summary>Puts a building of one room beside a random house, some way off, with or without a panel of its own.</summary>
internal static class BuildingGen
{
    internal static Job Beside(Job job, Draw draw)
    {
        var level = job.Levels[0];
        var east = level.Rooms.SelectMany(r => r.Size is { } size && r.At is { } at ? [at.X + size.Width] : r.Corners.Select(c => c.X)).Max();
        var room = new Room
        {
            Id = "apart",
            Kind = draw.Pick(RoomKind.Garage, RoomKind.Storage),
            Building = "B1",
            Corners = Square(east + Draw.Inches(draw.Int(60, 600)), Draw.Inches(draw.Int(0, 120)), Draw.Inches(draw.Int(120, 280)), Draw.Inches(draw.Int(120, 280))),
            Counts =
            [
                new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = draw.Int(1, 3) },
                new DeviceCount { Kind = DeviceKind.CeilingLight, Count = draw.Int(0, 2) },
                new DeviceCount { Kind = DeviceKind.SinglePoleSwitch, Count = 1 },
            ],
        };
        var fed = draw.Chance(50);
        return job with
        {
            Buildings = [new Building { Id = "B1", UnderDriveway = draw.Chance(30), Buried = draw.Pick<WiringMethod?>(null, WiringMethod.Uf, WiringMethod.BuriedConduit) }],
            Levels = job.Levels.SetItem(0, level with { Rooms = level.Rooms.Add(room) }),
            Panels = fed ? job.Panels.Add(new Panel { Id = "P9", Room = room.Id, RatingA = Current.FromAmperes(draw.Pick(60, 100)), Spaces = 8, FedFrom = "P1" }) : job.Panels,
        };
    }

    private static ImmutableArray<GridPoint> Square(Length x, Length y, Length width, Length depth) => [new(x, y), new(x + width, y), new(x + width, y + depth), new(x, y + depth)];
}
