using Estimator.Documents.House;
using Estimator.Engine;
using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;

namespace Estimator.Documents.Crew;

/// <summary>A run as the crew pulls it.</summary>
/// <param name="Circuit">Label of the circuit; that of the fed panel for a feeder.</param>
/// <param name="Name">What the circuit serves.</param>
/// <param name="From">Where it leaves, with the label of the box.</param>
/// <param name="To">Where it ends, with the label of the box.</param>
/// <param name="Cable">The cable.</param>
/// <param name="Length">The piece to cut, with its tolerance; the measured length where the run is a pipe.</param>
/// <param name="Carries">What it carries.</param>
/// <param name="Way">How it goes.</param>
/// <param name="Run">Id of the run.</param>
/// <param name="Node">What explains the length.</param>
public sealed record PulledRun(string Circuit, string Name, string From, string To, string Cable, Length Length, string Carries, string Way, string Run, NodeRef Node)
{
    /// <summary>Every run of a job, feeders first, then circuit by circuit.</summary>
    public static IEnumerable<PulledRun> Of(JobEstimate estimate, CrewLabels labels)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        ArgumentNullException.ThrowIfNull(labels);
        var pieces = estimate.Takeoff.Pieces.DistinctBy(p => p.Run).ToDictionary(p => p.Run, p => p.Length, StringComparer.Ordinal);
        foreach (var feeder in estimate.Wiring.Feeders)
        {
            var (from, to) = (PlaceWords.Panel(estimate, feeder.From), PlaceWords.Panel(estimate, feeder.To));
            var length = pieces.GetValueOrDefault(feeder.Id, feeder.Total);
            yield return new PulledRun($"Feeder {feeder.To}", $"Feeder of {to}", from, to, feeder.CableName, length.AsLength().Value, "feeder", RunWords.Way(feeder.Path, feeder.Fished), feeder.Id, length.Node);
        }

        foreach (var circuit in labels.InOrder)
        {
            foreach (var run in estimate.Wiring.Circuits[circuit].Runs.Select(r => estimate.Wiring.Runs[r]))
            {
                var length = pieces.GetValueOrDefault(run.Id, run.Total);
                yield return new PulledRun(
                    labels.Circuit(circuit), estimate.Wiring.Circuits[circuit].Name, labels.End(run.From, circuit), labels.End(run.To, circuit), RunWords.Cable(run.Cable), length.AsLength().Value,
                    RunWords.Role(run.Role), RunWords.Way(run), run.Id, length.Node);
            }
        }
    }
}
