using Estimator.Engine.House;
using Estimator.Web.Jobs;

namespace Estimator.Web.Overview;

/// <summary>What one more receptacle costs: the job priced again with it.</summary>
/// <param name="Room">The room that it goes into.</param>
/// <param name="Change">What it changes.</param>
public sealed record TenthFigure(string Room, JobDifference Change)
{
    /// <summary>Prices it; null where no room has a receptacle by count. Takes long: not on a tab's thread.</summary>
    public static async Task<TenthFigure?> OfAsync(PricedJob now)
    {
        var room = now.Job.Levels.SelectMany(l => l.Rooms).OrderByDescending(Receptacles).FirstOrDefault(r => Receptacles(r) > 0);
        return room is null
            ? null
            : new TenthFigure(RoomActs.Name(room), await JobDifference.OfAsync(now, RoomActs.Add(now.Job, room.Id, DeviceKind.DuplexReceptacle)));
    }

    private static int Receptacles(Room room) => RoomActs.Count(room, DeviceKind.DuplexReceptacle);
}
