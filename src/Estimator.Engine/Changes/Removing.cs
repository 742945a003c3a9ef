using Estimator.Engine.House;

namespace Estimator.Engine.Changes;

/// <summary>Takes things out of a job together with all that names them: controls, pinned circuits and their runs.</summary>
public static class Removing
{
    /// <summary>The job without a device that stands in its place.</summary>
    public static Job Device(Job job, string id) => Forget(
        job.WithRooms(r => r.Placed.Any(p => p.Id == id) ? r with { Placed = [.. r.Placed.Where(p => p.Id != id)] } : r),
        new HashSet<string>([id], StringComparer.Ordinal));

    /// <summary>The job whose controls and pins name none of these devices and pieces of equipment. What hung behind them is fed anew.</summary>
    public static Job Forget(Job job, IReadOnlySet<string> gone)
    {
        bool Gone(string name) => gone.Contains(name.Split('#')[0]);
        var pins = job.Pins.Circuits.Select(c => c with { Outlets = [.. c.Outlets.Where(o => !Gone(o))], Runs = [.. c.Runs.Where(r => !Gone(r.From) && !Gone(r.To))] })
            .Where(c => !c.Outlets.IsEmpty).ToList();
        return job with
        {
            Controls = [.. job.Controls.Select(c => c with { Switches = [.. c.Switches.Where(s => !Gone(s))], Loads = [.. c.Loads.Where(l => !Gone(l))] }).Where(c => !c.Switches.IsEmpty && !c.Loads.IsEmpty)],
            Pins = job.Pins with
            {
                Circuits = [.. pins.Select(c => pins.Any(o => o.Id == c.SharesNeutralWith) ? c : c with { SharesNeutralWith = null })],
            },
        };
    }
}
