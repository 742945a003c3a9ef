using System.Collections.Immutable;
using Estimator.Engine.Changes;
using Estimator.Engine.House;

namespace Estimator.Engine.Alternates;

/// <summary>Freezes a job together with what was offered beside it: an alternate counts devices by room, and in a frozen job each device stands in its place.</summary>
/// <remarks>What an alternate adds by count is added to the room; what it takes away by count goes from the last of its kind; a switch that becomes another keeps its place.</remarks>
public static class FrozenAlternates
{
    /// <summary>The job of an estimate with its wiring frozen and its alternates as they can be taken from then on.</summary>
    public static Job Pin(JobEstimate estimate)
    {
        var (before, frozen) = (estimate.House.Job, FrozenWiring.Pin(estimate));
        return frozen with { Alternates = [.. before.Alternates.Select(a => Carried(before, frozen, a))] };
    }

    // An alternate that cannot be made any more stays as it is, and says why where it stands.
    private static Alternate Carried(Job before, Job frozen, Alternate alternate)
    {
        // An alternate was made of things as they stood, and pins and controls name devices that it may take away: what freezing states is laid over what it makes.
        var counted = frozen.WithRooms(room => Find(before, room.Id) is { } was ? room with { Counts = was.Counts, Placed = was.Placed } : room) with { Pins = before.Pins, Controls = before.Controls, Equipment = before.Equipment, Panels = before.Panels };
        var with = AlternateChanges.Applied(counted, [alternate.Id]);
        return with.Ok ? AlternateChanges.Of(frozen, alternate.Id, alternate.Name, _ => Placed(before, with.Job, frozen)) : alternate;
    }

    private static Job Placed(Job before, Job with, Job frozen)
    {
        HashSet<string> gone = [.. frozen.Equipment.Select(e => e.Id).Except(with.Equipment.Select(e => e.Id), StringComparer.Ordinal)];
        var job = with.WithRooms(room => Find(frozen, room.Id) is { } stands && Find(before, room.Id) is { } was ? Room(was, room, stands, gone) : room);
        var own = with.Controls.Where(c => before.Controls.All(b => b.Id != c.Id));
        job = job with
        {
            Equipment = [.. job.Equipment.Select(e => e.At is null && e.Wall is null && frozen.Equipment.FirstOrDefault(f => f.Id == e.Id && f.Room == e.Room) is { } stands ? e with { At = stands.At, Wall = stands.Wall } : e)],
            Panels = [.. job.Panels.Select(p => p.At is null && p.Wall is null && frozen.Panels.FirstOrDefault(f => f.Id == p.Id && f.Room == p.Room) is { } stands ? p with { At = stands.At, Wall = stands.Wall } : p)],
        };
        return Removing.Forget(job with { Pins = frozen.Pins, Controls = [.. frozen.Controls, .. own.Where(c => frozen.Controls.All(f => f.Id != c.Id))] }, gone);
    }

    private static Room Room(Room was, Room with, Room stands, HashSet<string> gone)
    {
        var stated = was.Placed.ToDictionary(d => d.Id, StringComparer.Ordinal);
        var now = with.Placed.ToDictionary(d => d.Id, StringComparer.Ordinal);
        gone.UnionWith(stated.Keys.Where(id => !now.ContainsKey(id)));
        List<PlacedDevice> placed = [.. stands.Placed.Where(d => !gone.Contains(d.Id)).Select(d => now.TryGetValue(d.Id, out var own) && own != stated[d.Id] ? own : d), .. with.Placed.Where(d => !stated.ContainsKey(d.Id))];
        var more = Counted(with).ToDictionary(g => g.Key, g => g.Value - Counted(was).GetValueOrDefault(g.Key));
        foreach (var (kind, count) in Counted(was).Where(c => !more.ContainsKey(c.Key)))
        {
            more[kind] = -count;
        }

        foreach (var less in more.Where(m => m.Value < 0).OrderBy(m => m.Key).ToList())
        {
            var free = placed.Where(d => (d.Kind, d.Serves) == less.Key && !stated.ContainsKey(d.Id)).TakeLast(-less.Value).ToList();
            var other = more.FirstOrDefault(m => m.Value > 0 && less.Key.Kind.IsSwitch() && m.Key.Kind.IsSwitch() && m.Key.Serves == less.Key.Serves);
            foreach (var device in free)
            {
                var at = placed.IndexOf(device);
                if (other.Value > 0 && more[other.Key] > 0)
                {
                    (placed[at], more[other.Key]) = (device with { Kind = other.Key.Kind }, more[other.Key] - 1);
                }
                else
                {
                    placed.RemoveAt(at);
                    gone.Add(device.Id);
                }
            }
        }

        return with with
        {
            Placed = [.. placed],
            Counts = [.. stands.Counts, .. more.Where(m => m.Value > 0).OrderBy(m => m.Key).Select(m => new DeviceCount { Kind = m.Key.Kind, Serves = m.Key.Serves, Count = m.Value })],
        };
    }

    private static Dictionary<(DeviceKind Kind, ServedPlace Serves), int> Counted(Room room) => room.Counts.GroupBy(c => (c.Kind, c.Serves)).ToDictionary(g => g.Key, g => g.Sum(c => c.Count));

    private static Room? Find(Job job, string id) => job.Levels.SelectMany(l => l.Rooms).FirstOrDefault(r => r.Id == id);
}
