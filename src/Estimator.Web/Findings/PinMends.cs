using Estimator.Engine.Findings;
using Estimator.Engine.House;

namespace Estimator.Web.Findings;

/// <summary>Mends that let go what was pinned.</summary>
internal static class PinMends
{
    /// <summary>The job in which the breaker of a piece of equipment follows its load again.</summary>
    internal static Job FreeBreaker(Job job, string equipment) => job with
    {
        Pins = job.Pins with { Circuits = [.. job.Pins.Circuits.Select(c => c.Outlets.Contains(equipment) ? c with { BreakerA = null } : c)] },
    };

    /// <summary>Lets the program divide what pinned circuits hold together; null where none of them is in the finding.</summary>
    internal static Mend? Divide(Finding finding, Job job)
    {
        var pinned = job.Pins.Circuits.Where(c => c.Outlets.Any(o => finding.Where.Any(w => o == w || o.StartsWith($"{w}/", StringComparison.Ordinal)))).ToList();
        return pinned.Count == 0 ? null : new Mend(
            "Divide them anew", $"Circuits divided by the program: {string.Join(", ", pinned.Select(c => c.Id))}",
            j => j with { Pins = j.Pins with { Circuits = [.. j.Pins.Circuits.Where(c => pinned.All(p => p.Id != c.Id))] } });
    }
}
