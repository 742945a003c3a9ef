using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.JobFiles;

/// <summary>Checks the buildings that stand apart, and that rooms name one that exists.</summary>
internal static class BuildingValidation
{
    internal static void Check(Job job, ProblemList problems)
    {
        foreach (var (building, b) in job.Buildings.Select((x, i) => (x, i)))
        {
            problems.Length($"$.buildings[{b}].trench", building.Trench, Length.FromFeet(1), Length.FromFeet(JobLimits.Feet));
            if (building.Buried is { } buried && buried is not (WiringMethod.Uf or WiringMethod.BuriedConduit))
            {
                problems.Add($"$.buildings[{b}].buried", $"'{Rules.Words.Snake(buried)}'", "uf or buried_conduit, which may lie in the ground");
            }
        }

        var known = job.Buildings.Select(b => b.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var (room, path) in job.Levels.SelectMany((l, i) => l.Rooms.Select((r, j) => (r, $"$.levels[{i}].rooms[{j}].building"))))
        {
            if (room.Building is { } id && !known.Contains(id))
            {
                problems.Add(path, $"'{id}'", known.Count == 0 ? "no building, since the job states none that stands apart" : $"the id of a building: {string.Join(", ", known)}");
            }
        }
    }
}
