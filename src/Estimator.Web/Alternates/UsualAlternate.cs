using System.Collections.Immutable;
using Estimator.Engine.Alternates;
using Estimator.Engine.House;
using Estimator.Web.Jobs;

namespace Estimator.Web.Alternates;

/// <summary>An alternate that is offered often, as a form: what, where, how many.</summary>
/// <param name="Key">Its word in the field.</param>
/// <param name="Words">What is shown.</param>
/// <param name="Counted">Whether it asks how many.</param>
/// <param name="Placed">Whether it asks for a room.</param>
/// <param name="Name">What the customer reads: of room and number.</param>
/// <param name="Change">What it does to a job: room and number.</param>
internal sealed record UsualAlternate(string Key, string Words, bool Counted, bool Placed, Func<string, int, string> Name, Func<Job, string, int, Job> Change)
{
    /// <summary>All of them.</summary>
    internal static ImmutableArray<UsualAlternate> All { get; } =
    [
        Devices("receptacles", "More receptacles", "receptacle", DeviceKind.DuplexReceptacle),
        Devices("recessed", "More recessed lights", "recessed light", DeviceKind.RecessedLight),
        Devices("ceiling", "More ceiling lights", "ceiling light", DeviceKind.CeilingLight),
        Devices("wall", "More wall lights", "wall light", DeviceKind.WallLight),
        new("dimmers", "Dimmers for switches", false, true, (room, _) => $"{room}: dimmers in place of single-pole switches", (job, room, _) => RoomActs.With(job, room, Dimmed)),
        new("ev", "Outlet for an electric vehicle", false, true, (room, _) => $"{room}: circuit and outlet for an electric vehicle", (job, room, _) => AddedEquipment.With(job, EquipmentKind.EvCharger, room)),
        new("own", "Circuit of its own for an appliance", false, true, (room, _) => $"{room}: a circuit of its own for an appliance", (job, room, _) => AddedEquipment.Appliance(job, room)),
        new("feed", "One ground-fault receptacle first, or breakers", false, false, (_, _) => "Ground-fault protection by breakers", (job, _, _) => job with { Practice = job.Practice with { GroundFaultBy = GroundFaultBy.Breaker } }),
        new("fewer", "Fewer outlets on a circuit", true, false, (_, n) => $"No more than {n} outlets on a 20 A circuit", (job, _, n) => job with { Practice = job.Practice with { OutletsPer20A = n } }),
    ];

    /// <summary>The alternate; it has no changes where it does nothing to the job.</summary>
    internal Alternate Make(Job job, string id, string room, int count) =>
        AlternateChanges.Of(job, id, Name(RoomActs.All(job).FirstOrDefault(r => r.Id == room) is { } found ? RoomActs.Name(found) : "", count), j => Change(j, room, count));

    private static UsualAlternate Devices(string key, string words, string one, DeviceKind kind) =>
        new(key, words, true, true, (room, n) => $"{room}: {n} more {one}{(n == 1 ? "" : "s")}", (job, room, n) => RoomActs.Add(job, room, kind, more: n));

    private static Room Dimmed(Room room) => room with
    {
        Counts = [.. room.Counts.Select(c => c.Kind is DeviceKind.SinglePoleSwitch ? c with { Kind = DeviceKind.Dimmer } : c).GroupBy(c => (c.Kind, c.Serves)).Select(g => g.First() with { Count = g.Sum(c => c.Count) })],
        Placed = [.. room.Placed.Select(d => d.Kind is DeviceKind.SinglePoleSwitch ? d with { Kind = DeviceKind.Dimmer } : d)],
    };
}
