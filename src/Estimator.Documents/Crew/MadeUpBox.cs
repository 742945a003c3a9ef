using Estimator.Documents.Boxes;
using Estimator.Engine;
using Estimator.Engine.Wiring.Boxes;

namespace Estimator.Documents.Crew;

/// <summary>A box as the crew sets and makes it up.</summary>
/// <param name="Label">Its label.</param>
/// <param name="Circuit">Label of its circuit.</param>
/// <param name="Serves">Room, and what it holds.</param>
/// <param name="Item">The box itself.</param>
/// <param name="Gangs">Gangs.</param>
/// <param name="VolumeIn3">Its volume in cubic inches; null where the luminaire brings its own, or nothing fits.</param>
/// <param name="NeededIn3">Volume that its contents ask for.</param>
/// <param name="Fits">Whether they fit.</param>
/// <param name="Cables">Cables that enter.</param>
/// <param name="Splices">Splices under connectors.</param>
/// <param name="Index">Its index in the wiring.</param>
public sealed record MadeUpBox(string Label, string Circuit, string Serves, string Item, int Gangs, decimal? VolumeIn3, decimal NeededIn3, bool Fits, int Cables, int Splices, int Index)
{
    /// <summary>Every box of a job, circuit by circuit along the chain.</summary>
    public static IEnumerable<MadeUpBox> Of(JobEstimate estimate, CrewLabels labels)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        ArgumentNullException.ThrowIfNull(labels);
        var names = estimate.Takeoff.Lines.DistinctBy(l => l.ItemId).ToDictionary(l => l.ItemId, l => l.Description, StringComparer.Ordinal);
        return labels.InOrder.SelectMany(c => estimate.Wiring.Circuits[c].Boxes).Distinct().Select(b => Of(estimate, labels, names, b));
    }

    private static MadeUpBox Of(JobEstimate estimate, CrewLabels labels, Dictionary<string, string> names, int index)
    {
        var box = estimate.Wiring.Boxes[index];
        return new MadeUpBox(
            labels.Box(index), labels.Circuit(box.Circuit), BoxWords.Title(estimate, box), box.Item is { } item ? names.GetValueOrDefault(item.ItemId, item.ItemId) : Without(box), box.Gangs,
            box.Item?.Volume.ToCubicInches(), box.RequiredVolume.Value, box.Fits, box.CableEntries, box.Joints.Count(j => j.Connector), index);
    }

    private static string Without(Box box) => box.Fits ? "the luminaire's own wiring box" : "no box of the catalogue holds it";
}
