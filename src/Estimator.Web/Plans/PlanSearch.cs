using System.Collections.Immutable;
using Estimator.Engine;
using Estimator.Web.Frame;

namespace Estimator.Web.Plans;

/// <summary>What a reader came to the plan to see: rooms, devices, equipment, panels and circuits by id.</summary>
public static class PlanSearch
{
    /// <summary>Name of the query that carries an id; it may stand several times.</summary>
    public const string Query = "find";

    /// <summary>The plan with things marked.</summary>
    public static string Address(string jobId, IEnumerable<string> ids) =>
        $"{Stages.Address(jobId, "plan")}?{string.Join('&', ids.Distinct().Select(i => $"{Query}={Uri.EscapeDataString(i)}"))}";

    /// <summary>Those of some ids that the plan can mark.</summary>
    public static ImmutableArray<string> Marked(JobEstimate estimate, IEnumerable<string> ids) => [.. ids.Where(i => LevelOf(estimate, i) is not null)];

    /// <summary>The level that holds the first of some ids that stands on one; null where none does.</summary>
    public static int? LevelOf(JobEstimate estimate, IEnumerable<string> ids) => ids.Select(i => LevelOf(estimate, i)).FirstOrDefault(l => l is not null);

    /// <summary>Index of a circuit that is among some ids; null where none is.</summary>
    public static int? CircuitOf(JobEstimate estimate, IReadOnlySet<string> ids) =>
        Enumerable.Range(0, estimate.Wiring.Circuits.Length).Where(c => ids.Contains(estimate.Wiring.Circuits[c].Id)).Select(c => (int?)c).FirstOrDefault();

    private static int? LevelOf(JobEstimate estimate, string id) =>
        estimate.Layout.Devices.FirstOrDefault(d => d.Id == id)?.Place.Level
        ?? estimate.Layout.Equipment.FirstOrDefault(e => e.Source.Id == id)?.Place.Level
        ?? estimate.Layout.Panels.FirstOrDefault(p => p.Source.Id == id)?.Place.Level
        ?? estimate.House.Rooms.FirstOrDefault(r => r.Source.Id == id)?.Level
        ?? estimate.House.Levels.FirstOrDefault(l => l.Source.Id == id)?.Index
        ?? estimate.Wiring.Circuits.Where(c => c.Id == id && c.Boxes.Length > 0).Select(c => (int?)estimate.Wiring.Boxes[c.Boxes[0]].Place.Level).FirstOrDefault();
}
