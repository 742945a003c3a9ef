using Estimator.Web.Jobs;

namespace Estimator.Web.Findings;

/// <summary>Names for the ids that a finding carries.</summary>
public static class FindingPlaces
{
    /// <summary>Names rooms, levels, panels and circuits of a job; any other id stands for itself.</summary>
    public static Func<string, string> For(PricedJob priced)
    {
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var circuit in priced.Estimate.Wiring.Circuits)
        {
            names.TryAdd(circuit.Id, circuit.Name);
        }

        foreach (var level in priced.Job.Levels)
        {
            names.TryAdd(level.Id, level.Name.Length > 0 ? level.Name : level.Id);
        }

        foreach (var room in RoomActs.All(priced.Job))
        {
            names[room.Id] = RoomActs.Name(room);
        }

        foreach (var panel in priced.Job.Panels)
        {
            names[panel.Id] = panel.Name.Length > 0 ? panel.Name : panel.Id;
        }

        return id => names.GetValueOrDefault(id, id);
    }
}
