using Estimator.Data.Jobs;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;

namespace Estimator.Data.Tests.Jobs;

/// <summary>Short ways to make edits and to look at jobs.</summary>
internal static class Editing
{
    internal const string Who = "a tester";

    internal static string Text(this Job job) => JobFile.Write(job);

    internal static JobEdit To(this Job before, Job after, string id) => JobEditing.Between(before, after, id, $"Edit {id}");

    internal static JobEdit Renamed(this Job job, string name, string id) => job.To(job with { Name = name }, id);

    internal static JobEdit Noted(this Job job, string notes, string id) => job.To(job with { Notes = notes }, id);

    internal static async Task<T> AppendAsync<T>(this JobStore store, string job, int version, JobEdit edit)
        where T : AppendResult => Assert.IsType<T>(await store.AppendAsync(job, version, edit, Who, TestContext.Current.CancellationToken));
}
