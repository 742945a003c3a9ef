using Estimator.Engine.House;

namespace Estimator.Engine.Alternates;

/// <summary>Puts a piece of equipment on a circuit of its own into a job, under an id that nothing of the job has.</summary>
public static class AddedEquipment
{
    /// <summary>The job with it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="room">Id of the room that it stands in.</param>
    public static Job With(Job job, EquipmentKind kind, string room) =>
        job with { Equipment = job.Equipment.Add(new Equipment { Id = FreeId(job), Kind = kind, Room = room, OwnCircuit = true }) };

    /// <summary>The job with an appliance that hangs on a cord: a refrigerator's circuit stands for any of them.</summary>
    /// <param name="job">The job.</param>
    /// <param name="room">Id of the room that it stands in.</param>
    public static Job Appliance(Job job, string room) => With(job, EquipmentKind.Refrigerator, room);

    private static string FreeId(Job job)
    {
        var taken = job.Equipment.Select(e => e.Id).Concat(job.Panels.Select(p => p.Id)).Concat(job.Levels.SelectMany(l => l.Rooms).SelectMany(r => r.Placed).Select(d => d.Id)).ToHashSet(StringComparer.Ordinal);
        return Enumerable.Range(1, taken.Count + 1).Select(n => FormattableString.Invariant($"EX{n}")).First(id => !taken.Contains(id));
    }
}
