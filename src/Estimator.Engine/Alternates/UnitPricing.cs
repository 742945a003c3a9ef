using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Changes;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Alternates;

/// <summary>Unit prices for later adds: the job as it is wired, with one more of a thing, less the job as it is wired.</summary>
/// <remarks>
/// The wiring is frozen, as it is once it is sold, so one more of a thing moves nothing else; the price is not rounded up, or a step of rounding would be the unit price. The room is the one of
/// the middle size among those that have such a thing. Source: common practice, no source.
/// </remarks>
public static class UnitPricing
{
    private static readonly ImmutableArray<(string What, DeviceKind Kind)> Devices =
    [
        ("One more receptacle", DeviceKind.DuplexReceptacle), ("One more switch", DeviceKind.SinglePoleSwitch), ("One more recessed light", DeviceKind.RecessedLight),
        ("One more ceiling light", DeviceKind.CeilingLight), ("One more smoke alarm", DeviceKind.SmokeAlarm),
    ];

    /// <summary>The unit prices of what the job has, each a whole estimate: takes as long.</summary>
    /// <param name="estimate">The job.</param>
    /// <param name="catalogue">The catalogue.</param>
    public static ImmutableArray<UnitPrice> For(JobEstimate estimate, PartsCatalogue catalogue)
    {
        var frozen = FrozenWiring.Pin(estimate);
        var job = frozen with { Bid = frozen.Bid with { RoundPriceTo = Money.Zero } };
        var before = JobEstimate.Compute(job, catalogue, estimate.Depth);
        return [.. Devices.Select(d => (d.What, Room: Typical(estimate, d.Kind), d.Kind)).Where(d => d.Room is not null).Select(d =>
        {
            var after = AlternatePricing.Between(before, JobEstimate.Compute(WithOneMore(job, d.Room!, d.Kind), catalogue, estimate.Depth), []);
            return new UnitPrice(d.What, d.Room!.Name.Length > 0 ? d.Room.Name : d.Room.Id, after.Price, after.Hours, after.Book);
        })];
    }

    private static Room? Typical(JobEstimate estimate, DeviceKind kind)
    {
        var rooms = estimate.House.Rooms.Where(r => estimate.Layout.Devices.Any(d => d.Kind == kind && d.Place.Room == r.Index))
            .OrderBy(r => r.AreaSquareFeet.Value).ThenBy(r => r.Source.Id, StringComparer.Ordinal).Select(r => r.Source).ToList();
        return rooms.Count == 0 ? null : rooms[rooms.Count / 2];
    }

    private static Job WithOneMore(Job job, Room room, DeviceKind kind) => job with
    {
        Levels = [.. job.Levels.Select(l => l with { Rooms = [.. l.Rooms.Select(r => r.Id == room.Id ? r with { Counts = r.Counts.Add(new DeviceCount { Kind = kind, Count = 1 }) } : r)] })],
    };
}
