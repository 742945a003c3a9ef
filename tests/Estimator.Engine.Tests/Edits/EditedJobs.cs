using CsCheck;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.TestKit.Houses;

namespace Estimator.Engine.Tests.Edits;

/// <summary>Random jobs and edits for the tests of this folder.</summary>
internal static class EditedJobs
{
    internal const int Runs = 150;

    /// <summary>Numbers of houses that a job file would accept.</summary>
    internal static Gen<int> Houses { get; } = Gen.Int[0, 3000].Where(n => JobFile.Read(JobFile.Write(HouseGen.Number(n)), "house").Ok);

    /// <summary>A house, its number, and a number for what is done to it.</summary>
    internal static Gen<(int House, int Acts)> Acts { get; } = Gen.Select(Houses, Gen.Int[0, 100_000]);

    internal static Job Base(int house, int acts) => JobActs.After(HouseGen.Number(house), acts, 6, "base");

    internal static JobEdit Edit(Job job, int number, string editor) => JobEditing.Between(job, JobActs.After(job, number, 2, editor), editor, $"acts of {editor}");

    internal static Job Applied(Job job, JobEdit edit)
    {
        var edited = JobEditing.Apply(job, edit);
        Assert.True(edited.Ok, string.Join('\n', edited.Problems));
        return edited.Job;
    }

    internal static void Same(Job expected, Job actual) => Assert.Equal(JobFile.Write(expected), JobFile.Write(actual));
}
