using Estimator.Engine.Panels;

namespace Estimator.Engine.Tests.Houses;

/// <summary>What must hold of every panel, feeder and load sheet of any house.</summary>
internal static class PanelInvariants
{
    internal static IEnumerable<string> Problems(JobEstimate estimate) => estimate.Schedules.Panels.SelectMany(s => OfSchedule(estimate, s)).Concat(OfFeeders(estimate)).Concat(OfSheets(estimate));

    private static IEnumerable<string> OfSchedule(JobEstimate estimate, PanelSchedule schedule)
    {
        var job = estimate.House.Job;
        var panel = job.Panels.Single(p => p.Id == schedule.PanelId);
        var wanted = estimate.Wiring.Circuits.Where(c => estimate.Layout.Panels[c.Panel].Source.Id == panel.Id).Select(c => c.Id)
            .Concat(job.Panels.SelectMany(p => p.Circuits.Where(c => (c.MovedTo ?? p.Id) == panel.Id).Select(c => c.Id)))
            .Concat(job.Panels.Where(p => p.FedFrom == panel.Id && !p.Existing).Select(p => p.Id)).Order().ToList();
        var there = schedule.Breakers.Select(b => b.Breaker.Id).Concat(schedule.Unplaced.Select(b => b.Id)).Order().ToList();
        if (!wanted.SequenceEqual(there))
        {
            yield return $"{panel.Id}: the schedule has {there.Count} breakers, {wanted.Count} are wanted";
        }

        foreach (var space in schedule.Breakers.SelectMany(b => b.Spaces.Select(s => (Space: s, Halves: b.Half ? 1 : 2))).GroupBy(x => x.Space))
        {
            if (space.Key < 1 || space.Key > panel.Spaces || space.Sum(x => x.Halves) > 2)
            {
                yield return $"{panel.Id}: space {space.Key} holds {space.Count()} breakers";
            }
        }

        // Odd spaces on the left, even ones on the right, rows in turn on either leg.
        decimal Leg(int leg) => schedule.Breakers.Sum(b => b.Spaces.Where(s => (s - 1) / 2 % 2 == leg).Sum(_ => b.Breaker.LoadVa.Value / b.Spaces.Length));
        if (Leg(0) != schedule.LegAVa.Value || Leg(1) != schedule.LegBVa.Value || schedule.ImbalanceVa.Value != Math.Abs(Leg(0) - Leg(1)) || schedule.ImbalanceVa.Value < schedule.LowerBoundVa)
        {
            yield return $"{panel.Id}: legs of {schedule.LegAVa.Value} and {schedule.LegBVa.Value} VA, apart {schedule.ImbalanceVa.Value}, at least {schedule.LowerBoundVa}, come to {Leg(0)} and {Leg(1)}";
        }
    }

    private static IEnumerable<string> OfFeeders(JobEstimate estimate)
    {
        foreach (var panel in estimate.House.Job.Panels.Where(p => p is { Existing: false, FedFrom: not null }))
        {
            var feeder = estimate.Wiring.Feeders.SingleOrDefault(f => f.To == panel.Id);
            if (feeder is null || feeder.AmpacityA.Value < 0.8m * feeder.BreakerA.Value || feeder.Total.Value <= 0)
            {
                yield return $"{panel.Id}: its feeder is missing, too thin or has no length";
            }
        }
    }

    private static IEnumerable<string> OfSheets(JobEstimate estimate)
    {
        foreach (var sheet in estimate.Loads.Sheets.Concat(estimate.Loads.Feeders.Select(f => f.Sheet)))
        {
            var seasons = sheet.Lines.Where(l => l.Id is "total_with_heat_va" or "total_with_cooling_va").Select(l => l.Value.Value).ToList();
            if (seasons.Count > 0 && seasons.Max() != sheet.TotalVa.Value)
            {
                yield return $"{sheet.Method}: {sheet.TotalVa.Value} VA is not the larger season of {string.Join(" and ", seasons)}";
            }
        }
    }
}
