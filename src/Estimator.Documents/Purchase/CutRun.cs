using Estimator.Documents.House;
using Estimator.Engine;
using Estimator.Engine.Purchase;

namespace Estimator.Documents.Purchase;

/// <summary>What a piece is cut for, in words.</summary>
/// <param name="Run">Id of the run with its job.</param>
/// <param name="Circuit">Name of the circuit.</param>
/// <param name="From">Where it leaves.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Role">What it carries.</param>
public sealed record CutRun(string Run, string Circuit, string From, string To, string Role)
{
    /// <summary>The runs of the jobs by the id that a cut plan calls them.</summary>
    public static Dictionary<string, CutRun> Of(IEnumerable<JobEstimate> jobs) => jobs
        .SelectMany(j => j.Wiring.Runs.Select(r => new CutRun(
            $"{j.House.Job.Id}: {r.Id}", j.Wiring.Circuits[r.Circuit].Name, PlaceWords.From(j, r), PlaceWords.Box(j, r.To), PlaceWords.Kind(r.Role)))
            .Concat(j.Wiring.Feeders.Select(f => new CutRun($"{j.House.Job.Id}: {f.Id}", $"Feeder of {PlaceWords.Panel(j, f.To)}", PlaceWords.Panel(j, f.From), PlaceWords.Panel(j, f.To), "feeder"))))
        .GroupBy(r => r.Run, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);

    /// <summary>The run of a piece.</summary>
    public static CutRun For(IReadOnlyDictionary<string, CutRun> runs, CutPiece piece) =>
        runs.TryGetValue(piece.Run, out var run) ? run : new CutRun(piece.Run, "", "", "", "");
}
