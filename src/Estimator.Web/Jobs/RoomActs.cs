using Estimator.Engine.Changes;
using Estimator.Engine.House;

namespace Estimator.Web.Jobs;

/// <summary>What is done to the rooms of a job, as functions from a job to the next one.</summary>
public static class RoomActs
{
    /// <summary>What people call a room.</summary>
    public static string Name(Room room) => room.Name.Length > 0 ? room.Name : room.Id;

    /// <summary>All rooms, level by level.</summary>
    public static IEnumerable<Room> All(Job job) => job.Levels.SelectMany(l => l.Rooms);

    /// <summary>Devices of a kind that a room has by count, whatever they serve.</summary>
    public static int Count(Room room, DeviceKind kind) => room.Counts.Where(c => c.Kind == kind).Sum(c => c.Count);

    /// <summary>Devices of a kind that the user put in their place.</summary>
    public static int Placed(Room room, DeviceKind kind) => room.Placed.Count(p => p.Kind == kind);

    /// <summary>The job with a room changed; one that has no such room stays as it is.</summary>
    public static Job With(Job job, string roomId, Func<Room, Room> change) => job with
    {
        Levels = [.. job.Levels.Select(l => l.Rooms.Any(r => r.Id == roomId) ? l with { Rooms = [.. l.Rooms.Select(r => r.Id == roomId ? change(r) : r)] } : l)],
    };

    /// <summary>The job with so many devices of a kind in a room, those in their place not counted. What some of them serve is kept as far as the number goes.</summary>
    public static Job Set(Job job, string roomId, DeviceKind kind, int count, ServedPlace serves = ServedPlace.Room) => With(job, roomId, room =>
    {
        var others = room.Counts.Where(c => c.Kind == kind && c.Serves != serves).Sum(c => c.Count);
        var wanted = Math.Max(0, count - others);
        var known = room.Counts.Any(c => c.Kind == kind && c.Serves == serves);
        var counts = known
            ? room.Counts.Select(c => c.Kind == kind && c.Serves == serves ? c with { Count = wanted } : c)
            : room.Counts.Append(new DeviceCount { Kind = kind, Count = wanted, Serves = serves });
        var fewer = count < others ? TakeOff(counts, kind, others - count) : counts;
        return room with { Counts = [.. fewer.Where(c => c.Count > 0)] };
    });

    /// <summary>The job without the last of a room's devices of a kind that stand in their place, and without what names it.</summary>
    public static Job TakeOutPlaced(Job job, string roomId, DeviceKind kind) =>
        All(job).FirstOrDefault(r => r.Id == roomId)?.Placed.LastOrDefault(p => p.Kind == kind) is { } last ? Removing.Device(job, last.Id) : job;

    /// <summary>The job with more devices of a kind in a room.</summary>
    public static Job Add(Job job, string roomId, DeviceKind kind, ServedPlace serves = ServedPlace.Room, int more = 1) => With(job, roomId, room => room with
    {
        Counts = room.Counts.Any(c => c.Kind == kind && c.Serves == serves)
            ? [.. room.Counts.Select(c => c.Kind == kind && c.Serves == serves ? c with { Count = c.Count + more } : c)]
            : room.Counts.Add(new DeviceCount { Kind = kind, Count = more, Serves = serves }),
    });

    private static IEnumerable<DeviceCount> TakeOff(IEnumerable<DeviceCount> counts, DeviceKind kind, int off)
    {
        foreach (var count in counts)
        {
            var less = count.Kind == kind ? Math.Min(off, count.Count) : 0;
            off -= less;
            yield return count with { Count = count.Count - less };
        }
    }
}
