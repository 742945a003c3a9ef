using Estimator.Engine.House;

namespace Estimator.Documents.Budget;

/// <summary>What to ask the building department where the house stands. Questions, never a claim of ours.</summary>
public static class PermitQuestions
{
    /// <summary>The questions for a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="ownerWorks">Whether the owner means to do the work; null where nobody said.</param>
    public static IEnumerable<string> For(Job job, bool? ownerWorks)
    {
        var rooms = job.Levels.SelectMany(l => l.Rooms).ToList();
        yield return "Does this work need a permit, who may take it out, and what does it cost?";
        if (ownerWorks is not false)
        {
            yield return "May an owner who lives in the house wire it himself, must he pass a test first, and which part of the work is kept for a licensed electrician?";
        }

        if (ownerWorks is not true)
        {
            yield return "Which license must the firm hold here, and where can I look it up?";
        }

        yield return "Which edition of the code is enforced, and which local amendments go with it?";
        yield return "Which inspections are made, and what must stay open until the inspector has seen it?";
        if (rooms.Any(r => r.Kind is RoomKind.Bedroom))
        {
            yield return "What does a new bedroom ask for: a window or door to get out by, alarms in the rest of the house?";
        }

        if (job.Equipment.Any(e => e.Kind is EquipmentKind.EvCharger) || job.Panels.Any(p => !p.Existing))
        {
            yield return "Must the service be calculated again, and does the utility want to know?";
        }

        if (rooms.Any(r => r.Walls is WallState.Finished))
        {
            yield return "Must outlets that stand already be brought up to today's code where walls are opened?";
        }

        yield return "Will the insurer want to see who did the work and that it passed?";
    }
}
