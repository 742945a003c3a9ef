using Estimator.Engine;
using Estimator.Engine.House;
using Estimator.Engine.Layout;

namespace Estimator.Documents.Budget;

/// <summary>How many devices of a system are in a job, and how many of them the edition or usual practice asks for.</summary>
/// <param name="System">The system.</param>
/// <param name="InJob">How many are in the job.</param>
/// <param name="Asked">How many are asked for at least.</param>
/// <param name="By">Who asks: the code, or usual practice.</param>
internal sealed record MustHave(string System, int InJob, int Asked, string By)
{
    /// <summary>What is there beyond that.</summary>
    internal int Choice => Math.Max(0, InJob - Asked);

    /// <summary>Each system of a job: the same rooms with nothing in them are filled with the least.</summary>
    internal static IEnumerable<MustHave> Of(JobEstimate estimate)
    {
        var job = estimate.House.Job;
        var bare = job.WithRooms(r => r with { Counts = [], Placed = [] }) with { Practice = job.Practice with { ReceptacleSpacing = null }, Controls = [] };
        var least = CodeMinimum.Propose(bare).Levels.SelectMany(l => l.Rooms).SelectMany(r => r.Counts).ToList();
        // The code asks for a switched light; how many there are beyond the first of a room is usual practice.
        (string System, string By, Func<DeviceKind, bool> Belongs)[] systems =
        [
            ("Receptacles", "the code", DeviceTraits.IsReceptacle),
            ("Alarms", "the code", DeviceTraits.IsAlarm),
            ("Lights and fans", "code and usual practice", DeviceTraits.IsLuminaireOrFan),
            ("Switches", "code and usual practice", DeviceTraits.IsSwitch),
        ];
        return systems.Select(s => new MustHave(s.System, estimate.Layout.Devices.Count(d => s.Belongs(d.Kind)), least.Where(c => s.Belongs(c.Kind)).Sum(c => c.Count), s.By)).Where(m => m.InJob + m.Asked > 0);
    }
}
