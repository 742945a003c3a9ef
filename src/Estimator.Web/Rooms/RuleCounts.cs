using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Web.Jobs;

namespace Estimator.Web.Rooms;

/// <summary>How many devices the edition itself asks for in each room, so that a typed count can be held against it.</summary>
public sealed class RuleCounts
{
    private readonly Dictionary<(string Room, DeviceKind Kind), int> _counts;

    private RuleCounts(Dictionary<(string Room, DeviceKind Kind), int> counts) => _counts = counts;

    /// <summary>Nothing known.</summary>
    public static RuleCounts None { get; } = new([]);

    /// <summary>The least of a kind in a room; null where the rule says nothing of it there.</summary>
    public int? Of(string room, DeviceKind kind) => _counts.TryGetValue((room, kind), out var count) ? count : null;

    /// <summary>Works them out: the proposal for the same rooms without any device.</summary>
    public static RuleCounts For(Job job)
    {
        var bare = job.WithRooms(r => r with { Counts = [], Placed = [] }) with { Practice = job.Practice with { ReceptacleSpacing = null } };
        // Switches and lights of a proposal are practice; receptacles and alarms are what the rule counts.
        var counts = RoomActs.All(CodeMinimum.Propose(bare)).SelectMany(r => r.Counts.Where(c => c.Kind is DeviceKind.DuplexReceptacle || c.Kind.IsAlarm())
            .Select(c => (Key: (r.Id, c.Kind), c.Count)));
        return new RuleCounts(counts.GroupBy(x => x.Key).ToDictionary(g => g.Key, g => g.Sum(x => x.Count)));
    }
}
