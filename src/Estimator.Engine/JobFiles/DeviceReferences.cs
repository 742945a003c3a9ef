using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;

namespace Estimator.Engine.JobFiles;

/// <summary>Checks that controls and pins name devices that the job has, of a kind that fits, and none twice.</summary>
internal static class DeviceReferences
{
    private const string Fan = "#fan";
    private const string Light = "#light";

    internal static void Check(Job job, ProblemList problems)
    {
        var devices = Devices(job, problems);
        Controls(job, devices, problems);
        Pins(job, devices, problems);
    }

    // Kinds by id, those in their place and those by number.
    private static Dictionary<string, DeviceKind> Devices(Job job, ProblemList problems)
    {
        var devices = job.Levels.SelectMany(l => l.Rooms).SelectMany(Counted).ToDictionary(d => d.Id, d => d.Kind, StringComparer.Ordinal);
        foreach (var (placed, path) in job.Levels.SelectMany((l, i) => l.Rooms.SelectMany((r, j) => r.Placed.Select((d, k) => (d, $"$.levels[{i}].rooms[{j}].placed[{k}].id")))))
        {
            if (!devices.TryAdd(placed.Id, placed.Kind))
            {
                problems.Add(path, $"'{placed.Id}', the id of a device placed before", "an id that nothing else has");
            }
        }

        return devices;
    }

    private static void Controls(Job job, Dictionary<string, DeviceKind> devices, ProblemList problems)
    {
        var (switches, loads) = (new HashSet<string>(StringComparer.Ordinal), new HashSet<string>(StringComparer.Ordinal));
        foreach (var (control, c) in job.Controls.Select((x, i) => (x, i)))
        {
            problems.Range($"$.controls[{c}].switches", control.Switches.Length, 1, JobLimits.Count, "switches");
            foreach (var (id, path) in control.Switches.Select((s, i) => (s, $"$.controls[{c}].switches[{i}]")))
            {
                Fits(id, id, path, k => k.IsSwitch(), "a switch", devices, problems);
                Once(id, switches, path, "each switch in one control", problems);
            }

            foreach (var (load, path) in control.Loads.Select((s, i) => (s, $"$.controls[{c}].loads[{i}]")))
            {
                Load(load, path, devices, loads, problems);
            }
        }
    }

    private static void Load(string load, string path, Dictionary<string, DeviceKind> devices, HashSet<string> loads, ProblemList problems)
    {
        var id = load.EndsWith(Fan, StringComparison.Ordinal) ? load[..^Fan.Length] : load.EndsWith(Light, StringComparison.Ordinal) ? load[..^Light.Length] : load;
        if (id != load)
        {
            Fits(id, load, path, k => k is DeviceKind.CeilingFan, "a ceiling fan before #fan or #light", devices, problems);
        }
        else
        {
            Fits(id, load, path, k => k.IsLuminaireOrFan() || k is DeviceKind.HalfHotReceptacle, "a light, a fan or a half-hot receptacle", devices, problems);
        }

        foreach (var part in id == load && devices.GetValueOrDefault(id) is DeviceKind.CeilingFan ? (string[])[id + Fan, id + Light] : [load])
        {
            Once(part, loads, path, "each load in one control", problems);
        }
    }

    private static void Pins(Job job, Dictionary<string, DeviceKind> devices, ProblemList problems)
    {
        var equipment = job.Equipment.Select(e => e.Id).ToHashSet(StringComparer.Ordinal);
        var panels = job.Panels.Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        var pinned = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (pin, p) in job.Pins.Circuits.Select((x, i) => (x, i)))
        {
            foreach (var (id, path) in pin.Outlets.Select((x, i) => (x, $"$.pins.circuits[{p}].outlets[{i}]")))
            {
                if (!equipment.Contains(id))
                {
                    Fits(id, id, path, _ => true, "a device", devices, problems);
                }

                Once(id, pinned, path, "each outlet on one circuit", problems);
            }

            foreach (var (run, path) in pin.Runs.Select((x, i) => (x, $"$.pins.circuits[{p}].runs[{i}]")))
            {
                End(run.From, $"{path}.from", id => panels.Contains(id) || equipment.Contains(id) || devices.ContainsKey(id), "a panel, device or piece of equipment", problems);
                End(run.To, $"{path}.to", id => equipment.Contains(id) || devices.ContainsKey(id), "a device or piece of equipment", problems);
            }
        }
    }

    private static IEnumerable<(string Id, DeviceKind Kind)> Counted(Room room) => room.Counts.GroupBy(c => (c.Kind, c.Serves))
        .SelectMany(g => CountedIds.Of(room, g.Key.Kind, g.Key.Serves, g.Sum(c => Math.Max(0, c.Count))).Select(id => (id, g.Key.Kind)));

    private static void Fits(
        string id, string found, string path, Func<DeviceKind, bool> fits, string accepted, Dictionary<string, DeviceKind> devices, ProblemList problems)
    {
        if (!devices.TryGetValue(id, out var kind))
        {
            problems.Add(path, $"'{found}'", $"the id of a device of the job, such as {devices.Where(d => fits(d.Value)).Select(d => d.Key).FirstOrDefault() ?? "(it has none that fits)"}");
        }
        else if (!fits(kind))
        {
            problems.Add(path, $"'{found}', a {Words.Snake(kind)}", $"the id of {accepted}");
        }
    }

    private static void End(string id, string path, Func<string, bool> known, string accepted, ProblemList problems)
    {
        if (!known(id))
        {
            problems.Add(path, $"'{id}'", $"the id of {accepted}");
        }
    }

    private static void Once(string id, HashSet<string> seen, string path, string accepted, ProblemList problems)
    {
        if (!seen.Add(id))
        {
            problems.Add(path, $"'{id}' a second time", accepted);
        }
    }
}
