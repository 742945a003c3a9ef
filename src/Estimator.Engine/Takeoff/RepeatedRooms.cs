using System.Collections.Immutable;
using Estimator.Engine.House;

namespace Estimator.Engine.Takeoff;

/// <summary>Finds rooms that repeat another one: of its kind, with the same devices.</summary>
public static class RepeatedRooms
{
    /// <summary>Ids of the rooms that repeat an earlier one; none where the firm does not count on it.</summary>
    public static ImmutableHashSet<string> Of(Job job) => !job.Practice.RepeatedRooms ? [] :
    [
        .. job.Levels.SelectMany(l => l.Rooms).GroupBy(Content, StringComparer.Ordinal).Where(g => g.Key.Length > 0)
            .SelectMany(g => g.OrderBy(r => r.Id, StringComparer.Ordinal).Skip(1).Select(r => r.Id)),
    ];

    private static string Content(Room room)
    {
        var devices = room.Counts.Where(c => c.Count > 0).Select(c => (c.Kind, c.Count)).Concat(room.Placed.Select(p => (p.Kind, Count: 1)))
            .GroupBy(d => d.Kind).OrderBy(g => g.Key).Select(g => FormattableString.Invariant($"{g.Key} {g.Sum(d => d.Count)}")).ToList();
        return devices.Count == 0 ? "" : $"{room.Kind}: {string.Join(", ", devices)}";
    }
}
