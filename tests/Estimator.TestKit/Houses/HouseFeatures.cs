using Estimator.Engine.House;

namespace Estimator.TestKit.Houses;

/// <summary>What a random house has, so that a sweep can tell how many of each it saw.</summary>
[Flags]
public enum HouseFeatures
{
    None = 0,
    SeveralLevels = 1 << 0,
    RoomWithHole = 1 << 1,
    LShapedRoom = 1 << 2,
    ThreeWays = 1 << 3,
    FourWays = 1 << 4,
    Fan = 1 << 5,
    HalfHot = 1 << 6,
    SeveralAlarms = 1 << 7,
    Equipment = 1 << 8,
    OldWork = 1 << 9,
    HalfFullPanel = 1 << 10,
    PlacedDevices = 1 << 11,
    TwoPanels = 1 << 12,
    Outdoors = 1 << 13,
    Service = 1 << 14,
}

/// <summary>Finds the features of a job.</summary>
public static class HouseFeaturesOf
{
    public static HouseFeatures Features(Job job)
    {
        var rooms = job.Levels.SelectMany(l => l.Rooms).ToList();
        var kinds = rooms.SelectMany(r => r.Placed.Select(p => p.Kind).Concat(r.Counts.SelectMany(c => Enumerable.Repeat(c.Kind, c.Count)))).ToList();
        var features = HouseFeatures.None;
        void Add(bool has, HouseFeatures feature) => features |= has ? feature : HouseFeatures.None;
        Add(job.Levels.Length > 1, HouseFeatures.SeveralLevels);
        Add(rooms.Any(r => !r.Holes.IsEmpty), HouseFeatures.RoomWithHole);
        Add(rooms.Any(r => r.Corners.Length > 4), HouseFeatures.LShapedRoom);
        Add(kinds.Count(k => k is DeviceKind.ThreeWaySwitch) > 1, HouseFeatures.ThreeWays);
        Add(kinds.Contains(DeviceKind.FourWaySwitch), HouseFeatures.FourWays);
        Add(kinds.Contains(DeviceKind.CeilingFan), HouseFeatures.Fan);
        Add(kinds.Contains(DeviceKind.HalfHotReceptacle), HouseFeatures.HalfHot);
        Add(kinds.Count(k => k.IsAlarm()) > 1, HouseFeatures.SeveralAlarms);
        Add(!job.Equipment.IsEmpty, HouseFeatures.Equipment);
        Add(rooms.Any(r => r.Walls is WallState.Finished), HouseFeatures.OldWork);
        Add(job.Panels.Any(p => p.Circuits.Sum(c => c.Poles) * 2 >= p.Spaces), HouseFeatures.HalfFullPanel);
        Add(rooms.Any(r => !r.Placed.IsEmpty), HouseFeatures.PlacedDevices);
        Add(job.Panels.Length > 1, HouseFeatures.TwoPanels);
        Add(job.Service is not null, HouseFeatures.Service);
        Add(rooms.Any(r => r.Kind is RoomKind.Outdoors), HouseFeatures.Outdoors);
        return features;
    }
}
