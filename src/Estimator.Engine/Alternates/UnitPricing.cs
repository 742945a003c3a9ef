using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Changes;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Alternates;

/// <summary>Unit prices for later adds: the job as it is wired, with one more of a thing, less the job as it is wired.</summary>
/// <remarks>
/// The wiring is frozen, as it is once it is sold, so one more of a thing moves nothing else; the price is not rounded up, or a step of rounding would be the unit price. The room is the one of
/// the middle size among those that have such a thing. A circuit for which no panel has a space is left out. Source: common practice, no source.
/// </remarks>
public static class UnitPricing
{
    private const string Trench = "trench";
    private const int TrenchFeet = 10;

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
        var open = Unplaced(before);
        return
        [
            .. Adds(estimate, job).Select(a => (a.What, a.Where, After: JobEstimate.Compute(a.With, catalogue, estimate.Depth))).Where(a => Unplaced(a.After) <= open).Select(a =>
            {
                var more = AlternatePricing.Between(before, a.After, []);
                return new UnitPrice(a.What, a.Where, more.Price, more.Hours, more.Book);
            }),
        ];
    }

    private static int Unplaced(JobEstimate estimate) => estimate.Schedules.Panels.Sum(p => p.Unplaced.Length);

    private static IEnumerable<(string What, string Where, Job With)> Adds(JobEstimate estimate, Job job) =>
    [
        .. Devices.Select(d => (d.What, Room: Typical(estimate, d.Kind), d.Kind)).Where(d => d.Room is not null).Select(d => (d.What, Name(d.Room!), WithOneMore(job, d.Room!, d.Kind))),
        .. Typical(estimate, DeviceKind.DuplexReceptacle) is { } room ? [("One more circuit of its own, with its receptacle", Name(room), AddedEquipment.Appliance(job, room.Id))] : Array.Empty<(string, string, Job)>(),
        .. job.Buildings.Select((b, i) => (Building: b, Index: i, Feet: TrenchTo(estimate, b))).Where(b => b.Feet is not null)
            .Select(b => ($"{TrenchFeet} more feet of trench", b.Building.Name.Length > 0 ? b.Building.Name : b.Building.Id, WithTrench(job, b.Index, b.Feet!.Value))),
    ];

    private static string Name(Room room) => room.Name.Length > 0 ? room.Name : room.Id;

    private static Room? Typical(JobEstimate estimate, DeviceKind kind)
    {
        var rooms = estimate.House.Rooms.Where(r => estimate.Layout.Devices.Any(d => d.Kind == kind && d.Place.Room == r.Index))
            .OrderBy(r => r.AreaSquareFeet.Value).ThenBy(r => r.Source.Id, StringComparer.Ordinal).Select(r => r.Source).ToList();
        return rooms.Count == 0 ? null : rooms[rooms.Count / 2];
    }

    private static Job WithOneMore(Job job, Room room, DeviceKind kind) =>
        job.WithRooms(r => r.Id == room.Id ? r with { Counts = r.Counts.Add(new DeviceCount { Kind = kind, Count = 1 }) } : r);

    private static Length? TrenchTo(JobEstimate estimate, Building building) =>
        estimate.Takeoff.Lines.FirstOrDefault(l => l.ItemId == Trench) is { } line && line.ByPlace.TryGetValue(building.Id, out var feet) ? Length.FromFeet(feet) : null;

    private static Job WithTrench(Job job, int building, Length now) =>
        job with { Buildings = job.Buildings.SetItem(building, job.Buildings[building] with { Trench = now + Length.FromFeet(TrenchFeet) }) };
}
