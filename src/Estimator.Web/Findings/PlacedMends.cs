using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Web.Jobs;

namespace Estimator.Web.Findings;

/// <summary>Mends of devices that the user put in their place.</summary>
internal static class PlacedMends
{
    /// <summary>Puts a device at the usual height; null where its height was not stated, or where the usual one would not help.</summary>
    internal static Mend? UsualHeight(Finding finding, Job job) => Of(finding, job) is ({ Height: not null } device, { } room)
        && (finding.Code != "below-counter" || device.Serves is ServedPlace.Counter or ServedPlace.Island)
            ? new Mend("Put it at the usual height", $"{device.Id}: usual height", Changed(room, device, d => d with { Height = null }))
            : null;

    /// <summary>Buys a device instead of waiting for the owner's.</summary>
    internal static Mend? Supply(Finding finding, Job job) => Of(finding, job) is ({ OwnerSupplied: true } device, { } room)
        ? new Mend("Supply it ourselves", $"{device.Id}: supplied by us", Changed(room, device, d => d with { OwnerSupplied = false }))
        : null;

    /// <summary>Takes a recessed light for a surface one, in its place or by count.</summary>
    internal static Mend? Recessed(Finding finding, Job job)
    {
        if (Of(finding, job) is ({ Kind: DeviceKind.CeilingLight } placed, { } room))
        {
            return new Mend("Take a recessed light", $"{placed.Id}: recessed", Changed(room, placed, d => d with { Kind = DeviceKind.RecessedLight }));
        }

        return RoomActs.All(job).FirstOrDefault(r => finding.Where.Contains(r.Id)) is { } closet && RoomActs.Count(closet, DeviceKind.CeilingLight) is > 0 and var count
            && !job.Controls.Any(c => c.Loads.Any(l => l.StartsWith($"{closet.Id}/", StringComparison.Ordinal)))
            ? new Mend("Take a recessed light", $"{RoomActs.Name(closet)}: recessed light", j => RoomActs.Add(RoomActs.Set(j, closet.Id, DeviceKind.CeilingLight, count - 1), closet.Id, DeviceKind.RecessedLight))
            : null;
    }

    private static (PlacedDevice? Device, Room? Room) Of(Finding finding, Job job) => RoomActs.All(job)
        .SelectMany(r => r.Placed.Where(p => finding.Where.Contains(p.Id)).Select(p => ((PlacedDevice?)p, (Room?)r))).FirstOrDefault();

    private static Func<Job, Job> Changed(Room room, PlacedDevice device, Func<PlacedDevice, PlacedDevice> change) =>
        job => RoomActs.With(job, room.Id, r => r with { Placed = [.. r.Placed.Select(p => p.Id == device.Id ? change(p) : p)] });
}
