using System.Collections.Immutable;
using Estimator.Engine;
using Estimator.Web.Figures;

namespace Estimator.Web.Takeoff;

/// <summary>Says by name what a line is for: rooms, circuits, panels, equipment.</summary>
public sealed class ServedNames
{
    private const int Shown = 4;
    private readonly Dictionary<string, string> _names;
    private readonly HashSet<string> _circuits;

    /// <summary>The names in an estimate.</summary>
    public ServedNames(JobEstimate estimate)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        var job = estimate.House.Job;
        _circuits = [.. estimate.Wiring.Circuits.Select(c => c.Id)];
        _names = job.Levels.SelectMany(l => l.Rooms).Select(r => (r.Id, r.Name))
            .Concat(estimate.Wiring.Circuits.Select(c => (c.Id, c.Name)))
            .Concat(job.Panels.Select(p => (p.Id, p.Name))).Concat(job.Equipment.Select(e => (e.Id, e.Name))).Append(("job", "the whole job"))
            .Where(n => n.Item2.Length > 0).GroupBy(n => n.Item1, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First().Item2, StringComparer.Ordinal);
    }

    /// <summary>The first few names, and how many more there are; several circuits are only counted, because their names are long.</summary>
    public string Few(ImmutableArray<string> ids)
    {
        var circuits = ids.Count(_circuits.Contains);
        var named = ids.Where(id => circuits < 2 || !_circuits.Contains(id)).Select(Name).ToList();
        IEnumerable<string> few = circuits < 2 ? named.Take(Shown) : [American.Count(circuits, "circuit"), .. named.Take(Shown)];
        return string.Join(", ", few) + (named.Count > Shown ? $" and {American.Number(named.Count - Shown)} more" : "");
    }

    /// <summary>All names.</summary>
    public string All(ImmutableArray<string> ids) => string.Join(", ", ids.Select(Name));

    private string Name(string id) => _names.GetValueOrDefault(id, id);
}
