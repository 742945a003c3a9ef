using Estimator.Data.Jobs;
using Estimator.Engine.Edits;

namespace Estimator.Data.Editor;

/// <summary>Appends edits without end and says each that was acknowledged, until the program is killed.</summary>
internal static class Appending
{
    internal static async Task RunAsync(JobStore store, string jobId, string run)
    {
        var stored = await store.LoadAsync(jobId) ?? throw new ArgumentException($"There is no job {jobId}.");
        var (job, version) = (stored.Job, stored.Version);
        for (var i = 1; ; i++)
        {
            var id = $"{run}-{i}";
            var edit = JobEditing.Between(job, job with { Notes = id }, id, $"Notes {id}");
            if (await store.AppendAsync(jobId, version, edit, "the editor") is not Appended appended)
            {
                throw new InvalidOperationException($"The edit {id} was not stored.");
            }

            Console.WriteLine($"stored {id}");
            (job, version) = (appended.Job, appended.Version);
        }
    }
}
