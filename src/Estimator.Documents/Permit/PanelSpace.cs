using Estimator.Engine.Panels;

namespace Estimator.Documents.Permit;

/// <summary>A space of a panel as a schedule shows it.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Leg">The leg it is on.</param>
/// <param name="Breakers">What stands in it: nothing, a breaker, or the two halves of a tandem.</param>
public sealed record PanelSpace(int Number, PanelLeg Leg, IReadOnlyList<ScheduledBreaker> Breakers)
{
    /// <summary>What the space puts on its leg, in volt-amperes: of a two-pole breaker each pole bears half.</summary>
    public decimal LoadVa => Breakers.Sum(b => b.Breaker.LoadVa.Value / b.Spaces.Length);

    /// <summary>What is in it; empty where it is free.</summary>
    public string Name => string.Join("; ", Breakers.Select(b => b.Breaker.Name));

    /// <summary>Every space of a panel, the free ones too.</summary>
    public static IEnumerable<PanelSpace> Of(PanelSchedule schedule)
    {
        ArgumentNullException.ThrowIfNull(schedule);
        return Enumerable.Range(1, schedule.Spaces).Select(n => new PanelSpace(n, (n - 1) / 2 % 2 == 0 ? PanelLeg.A : PanelLeg.B, [.. schedule.Breakers.Where(b => b.Spaces.Contains(n))]));
    }
}
