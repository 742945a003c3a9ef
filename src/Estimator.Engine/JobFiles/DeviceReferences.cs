using Estimator.Engine.House;
using Estimator.Engine.Rules;

namespace Estimator.Engine.JobFiles;

/// <summary>Checks that controls and pins name devices that the job has.</summary>
internal static class DeviceReferences
{
    internal static void Check(Job job, ProblemList problems)
    {
        var devices = job.Levels.SelectMany(l => l.Rooms).SelectMany(Ids).ToHashSet(StringComparer.Ordinal);
        foreach (var (control, c) in job.Controls.Select((x, i) => (x, i)))
        {
            foreach (var (id, path) in control.Switches.Select((s, i) => (s, $"$.controls[{c}].switches[{i}]"))
                .Concat(control.Loads.Select((s, i) => (s.Split('#')[0], $"$.controls[{c}].loads[{i}]"))))
            {
                Known(id, devices, path, problems);
            }
        }

        var outlets = devices.Concat(job.Equipment.Select(e => e.Id)).ToHashSet(StringComparer.Ordinal);
        foreach (var (pin, p) in job.Pins.Circuits.Select((x, i) => (x, i)))
        {
            foreach (var (id, i) in pin.Outlets.Select((x, i) => (x, i)))
            {
                Known(id, outlets, $"$.pins.circuits[{p}].outlets[{i}]", problems);
            }
        }
    }

    private static IEnumerable<string> Ids(Room room) => room.Placed.Select(p => p.Id).Concat(room.Counts.GroupBy(c => (c.Kind, c.Serves)).SelectMany(g =>
        Enumerable.Range(1, g.Sum(c => Math.Max(0, c.Count))).Select(n => g.Key.Serves is ServedPlace.Room
            ? $"{room.Id}/{Words.Snake(g.Key.Kind)}-{n}"
            : $"{room.Id}/{Words.Snake(g.Key.Kind)}-{Words.Snake(g.Key.Serves)}-{n}")));

    private static void Known(string id, HashSet<string> devices, string path, ProblemList problems)
    {
        if (!devices.Contains(id))
        {
            problems.Add(path, $"'{id}'", $"the id of a device of the job, such as {devices.FirstOrDefault() ?? "(it has none)"}");
        }
    }
}
