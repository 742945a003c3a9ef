using System.Collections.Immutable;
using Estimator.Data.Databases;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;

namespace Estimator.Data.Jobs;

/// <summary>Between jobs and their rows.</summary>
internal static class JobRows
{
    internal static JobRow New(Job job, long company, string who, DateTimeOffset now)
    {
        var row = new JobRow
        {
            CompanyId = company,
            Id = job.Id,
            Name = "",
            SearchText = "",
            State = Word.Of(JobState.Draft),
            Json = "",
            CreatedUtcTicks = now.UtcTicks,
            ChangedBy = "",
        };
        Set(row, job, who, now);
        return row;
    }

    internal static void Set(JobRow row, Job job, string who, DateTimeOffset now)
    {
        row.Json = JobFile.Write(job);
        row.Name = StorableText.Of(job.Name);
        row.SearchText = SearchText(string.Join('\n', job.Name, job.Id, job.Notes, job.Origin));
        row.ChangedBy = StorableText.Of(who);
        row.ChangedUtcTicks = now.UtcTicks;
    }

    internal static string SearchText(string text) => StorableText.Of(text).ToLowerInvariant();

    /// <exception cref="InvalidDataException">The stored job is not one that this program reads.</exception>
    internal static Job Job(string json, string id)
    {
        var reading = JobFile.Read(json, id);
        return reading.Ok ? reading.Job : throw new InvalidDataException($"The stored job {id} cannot be read. {reading.Problems[0]}");
    }

    internal static JobEditRow Edit(JobRow job, int sequence, JobEdit edit, string who, DateTimeOffset now) => new()
    {
        CompanyId = job.CompanyId,
        JobId = job.Id,
        Sequence = sequence,
        EditId = edit.Id,
        Title = StorableText.Of(edit.Title),
        Json = EditJson.Write(edit),
        Targets = [.. edit.Changes.Select(c => StorableText.Of(c.Target.Text)).Distinct(StringComparer.Ordinal)],
        Who = StorableText.Of(who),
        AtUtcTicks = now.UtcTicks,
    };

    internal static LoggedEdit Logged(JobEditRow row) => new(row.Sequence, EditJson.Read(row.Json).Value, row.Who, Utc(row.AtUtcTicks));

    internal static ImmutableArray<LoggedEdit> Logged(IEnumerable<JobEditRow> rows) => [.. rows.Select(Logged)];

    internal static JobSnapshotRow Snapshot(JobRow job, int version) => new() { CompanyId = job.CompanyId, JobId = job.Id, Version = version, Json = job.Json };

    internal static DateTimeOffset Utc(long ticks) => new(ticks, TimeSpan.Zero);
}
