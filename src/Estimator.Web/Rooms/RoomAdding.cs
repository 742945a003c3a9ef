using System.Collections.Immutable;
using Estimator.Engine.Changes;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Web.Jobs;

namespace Estimator.Web.Rooms;

/// <summary>Adds, repeats and removes rooms, as functions from a job to the next one.</summary>
public static class RoomAdding
{
    /// <summary>The job with a room by its name and two sides, furnished with the least that the edition asks for.</summary>
    public static Job Add(Job job, string id, string name, RoomKind kind, Length width, Length depth, ImmutableArray<DeviceCount> extras) =>
        Furnish(Put(job, new Room { Id = id, Name = name, Kind = kind, Size = new RectangleSize(width, depth) }), id, extras);

    /// <summary>The job with a room that has just these devices.</summary>
    public static Job Put(Job job, Room room) => job.Levels.IsEmpty
        ? job with { Levels = [new Level { Id = "L1", Name = "First level", Rooms = [room] }] }
        : job with { Levels = job.Levels.SetItem(0, job.Levels[0] with { Rooms = job.Levels[0].Rooms.Add(room) }) };

    /// <summary>The job with a room once more: same use, sides and counts, arranged by the program.</summary>
    public static Job Repeat(Job job, string roomId, string id)
    {
        if (RoomActs.All(job).FirstOrDefault(r => r.Id == roomId) is not { } room)
        {
            return job;
        }

        var copy = room with { Id = id, Name = NextName(job, RoomActs.Name(room)), At = null, Placed = [], Fixtures = [.. room.Fixtures.Select(f => f with { At = null })] };
        return job with { Levels = [.. job.Levels.Select(l => l.Rooms.Any(r => r.Id == roomId) ? l with { Rooms = l.Rooms.Insert(l.Rooms.FindIndex(r => r.Id == roomId) + 1, copy) } : l)] };
    }

    /// <summary>The job without a room, its doors and windows, its equipment, and what named them. A panel that hangs there keeps the room, which the job's own check says.</summary>
    public static Job Remove(Job job, string roomId)
    {
        var gone = RoomActs.All(job).Where(r => r.Id == roomId).SelectMany(DevicesOf).Concat(job.Equipment.Where(e => e.Room == roomId).Select(e => e.Id)).ToHashSet(StringComparer.Ordinal);
        var without = job with
        {
            Levels =
            [
                .. job.Levels.Select(l => l with
                {
                    Rooms = [.. l.Rooms.Where(r => r.Id != roomId)],
                    Openings = [.. l.Openings.Where(o => o.Room != roomId).Select(o => o.OtherRoom == roomId ? o with { OtherRoom = null } : o)],
                }),
            ],
            Equipment = [.. job.Equipment.Where(e => e.Room != roomId)],
            Unknowns = [.. job.Unknowns.Where(u => u.Room != roomId)],
        };
        return Removing.Forget(without, gone);
    }

    private static IEnumerable<string> DevicesOf(Room room) => room.Placed.Select(p => p.Id)
        .Concat(room.Counts.GroupBy(c => (c.Kind, c.Serves)).SelectMany(g => CountedIds.Of(room, g.Key.Kind, g.Key.Serves, g.Sum(c => c.Count))));

    /// <summary>A name that no room has: Bedroom, Bedroom 2, Bedroom 3.</summary>
    public static string NextName(Job job, string name)
    {
        var stem = name.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9').TrimEnd();
        var taken = RoomActs.All(job).Select(RoomActs.Name).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return taken.Contains(stem) ? Enumerable.Range(2, taken.Count + 1).Select(n => $"{stem} {n}").First(n => !taken.Contains(n)) : stem;
    }

    /// <summary>Gives a room without devices those that the edition asks for.</summary>
    private static Job Furnish(Job job, string roomId, ImmutableArray<DeviceCount> extras)
    {
        var least = RoomActs.All(CodeMinimum.Propose(job)).First(r => r.Id == roomId).Counts;
        var furnished = RoomActs.With(job, roomId, r => r with { Counts = least });
        return extras.Aggregate(furnished, (j, e) => RoomActs.Add(j, roomId, e.Kind, e.Serves, e.Count));
    }

    private static int FindIndex(this ImmutableArray<Room> rooms, Predicate<Room> match)
    {
        for (var i = 0; i < rooms.Length; i++)
        {
            if (match(rooms[i]))
            {
                return i;
            }
        }

        return -1;
    }
}
