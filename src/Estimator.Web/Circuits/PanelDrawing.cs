using System.Collections.Immutable;
using Estimator.Engine.Panels;

namespace Estimator.Web.Circuits;

/// <summary>A panel's schedule as the spaces of a drawn cabinet, the free ones between them.</summary>
public static class PanelDrawing
{
    /// <summary>The spaces of a panel, by their number.</summary>
    /// <param name="schedule">The schedule.</param>
    /// <param name="numbers">Number of each new circuit on drawings, by its id.</param>
    public static ImmutableArray<PanelSpace> Of(PanelSchedule schedule, IReadOnlyDictionary<string, int> numbers)
    {
        var taken = schedule.Breakers.GroupBy(b => b.Spaces[0]).Select(g => Drawn([.. g], numbers));
        var free = schedule.FreeSpaces.Select(n => new PanelSpace((n - 1) / 2, n % 2 == 1, 1, "", 0, 0));
        return [.. taken.Concat(free).OrderBy(s => s.Number)];
    }

    private static PanelSpace Drawn(ImmutableArray<ScheduledBreaker> here, IReadOnlyDictionary<string, int> numbers)
    {
        var first = here.FirstOrDefault(b => b.Breaker.Origin is BreakerOrigin.Circuit) ?? here[0];
        return new PanelSpace(
            (first.Spaces[0] - 1) / 2, first.Spaces[0] % 2 == 1, first.Spaces.Length, string.Join(" / ", here.Select(b => b.Breaker.Name)), first.Breaker.BreakerA,
            first.Breaker.Origin is BreakerOrigin.Circuit ? numbers.GetValueOrDefault(first.Breaker.Id) : 0)
        {
            Feeds = first.Breaker.Origin is BreakerOrigin.Feeder,
            Shared = here.Length > 1,
        };
    }
}
