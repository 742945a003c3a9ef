using System.Text;
using Estimator.Data.Jobs;
using Estimator.Engine.JobFiles;

namespace Estimator.Web.Jobs;

/// <summary>Hands out a job as its file.</summary>
public static class JobFileEndpoint
{
    /// <summary>Maps the address.</summary>
    public static void MapJobFiles(this WebApplication app) => app.MapGet("/jobs/{jobId}/file", async (string jobId, JobStore store, CancellationToken token) =>
        await store.LoadAsync(jobId, token) is { } stored
            ? Results.File(Encoding.UTF8.GetBytes(JobFile.Write(stored.Job)), "application/json", $"{Stem(stored.Job.Name)}.json")
            : Results.NotFound());

    /// <summary>A name that every file system takes, without its ending.</summary>
    internal static string Stem(string name)
    {
        var kept = string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')).Trim('-');
        while (kept.Contains("--", StringComparison.Ordinal))
        {
            kept = kept.Replace("--", "-", StringComparison.Ordinal);
        }

        return kept.Length == 0 ? "job" : kept[..Math.Min(kept.Length, 60)];
    }
}
