using System.Collections.Immutable;
using Estimator.Data.Databases;
using Estimator.Engine.Edits;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Jobs;

/// <summary>The log of edits.</summary>
public sealed partial class JobStore
{
    // Each lost race is another writer's success; so many in a row means that something else is wrong.
    private const int Attempts = 1_000;

    /// <summary>Stores an edit. What others stored since its base is merged where both do not touch the same thing; else both sides are answered.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="baseVersion">Version of the job that the edit was made on.</param>
    /// <param name="edit">The edit. The same edit sent again, after an answer that got lost, is stored once.</param>
    /// <param name="who">Who made it.</param>
    /// <param name="token">Ends the wait.</param>
    /// <exception cref="ArgumentException">The base is beyond the job's version, the edit's id is empty or too long, it belongs to another edit, or the job's own id would change.</exception>
    public async Task<AppendResult> AppendAsync(string jobId, int baseVersion, JobEdit edit, string who, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(edit);
        ArgumentOutOfRangeException.ThrowIfNegative(baseVersion);
        if (edit.Id.Length is 0 or > JobIds.Longest || StorableText.Of(edit.Id) != edit.Id)
        {
            throw new ArgumentException($"The edit's id has {edit.Id.Length} characters; 1 to {JobIds.Longest} are accepted.", nameof(edit));
        }

        for (var attempt = 0; attempt < Attempts; attempt++)
        {
            await using var db = await _contexts.CreateDbContextAsync(token);
            if (await TryAppendAsync(db, jobId, baseVersion, edit, who, token) is { } result)
            {
                return result;
            }
        }

        throw new TimeoutException($"The edit {edit.Id} of job {jobId} lost {Attempts} races against other writers.");
    }

    /// <summary>Edits of a job in the order of the log.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="after">Only edits after this sequence.</param>
    /// <param name="most">How many at most.</param>
    /// <param name="target">Only edits that touch this target; null for all.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task<ImmutableArray<LoggedEdit>> HistoryAsync(
        string jobId, int after = 0, int most = int.MaxValue, string? target = null, CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        var rows = await db.JobEdits.AsNoTracking()
            .Where(e => e.JobId == jobId && e.Sequence > after && (target == null || e.Targets.Contains(target)))
            .OrderBy(e => e.Sequence).Take(most).ToListAsync(token);
        return JobRows.Logged(rows);
    }

    // Null where another writer was faster.
    private async Task<AppendResult?> TryAppendAsync(EstimatorContext db, string jobId, int baseVersion, JobEdit edit, string who, CancellationToken token)
    {
        if (await db.Jobs.SingleOrDefaultAsync(r => r.Id == jobId, token) is not { } row)
        {
            return new JobGone(jobId);
        }

        if (baseVersion > row.Version)
        {
            throw new ArgumentOutOfRangeException(nameof(baseVersion), baseVersion, $"The job {jobId} has version {row.Version}.");
        }

        var theirs = JobRows.Logged(await db.JobEdits.AsNoTracking()
            .Where(e => e.JobId == jobId && e.Sequence > baseVersion && e.Sequence <= row.Version).OrderBy(e => e.Sequence).ToListAsync(token));
        if (await db.JobEdits.AsNoTracking().SingleOrDefaultAsync(e => e.JobId == jobId && e.EditId == edit.Id, token) is { } logged)
        {
            return logged.Json != EditJson.Write(edit)
                ? throw new ArgumentException($"The id {edit.Id} belongs to another edit of job {jobId}, number {logged.Sequence}.", nameof(edit))
                : logged.Sequence > row.Version ? null
                : new Appended(JobRows.Job(row.Json, jobId), row.Version, [.. theirs.Where(t => t.Sequence != logged.Sequence)]);
        }

        var conflicts = EditConflicts.Between(edit, [.. theirs.Select(t => t.Edit)]);
        if (conflicts.Length > 0)
        {
            return new AppendConflict(conflicts, theirs, await StoredAsync(db, row, token));
        }

        var edited = JobEditing.Apply(JobRows.Job(row.Json, jobId), edit);
        if (!edited.Ok)
        {
            return new AppendRefused(edited.Problems, await StoredAsync(db, row, token));
        }

        if (edited.Job.Id != jobId)
        {
            throw new ArgumentException($"The edit changes the id of job {jobId}; an id stays.", nameof(edit));
        }

        return await StoreAsync(db, row, edit, who, edited.Job, token) is { } version ? new Appended(edited.Job, version, theirs) : null;
    }

    private async Task<int?> StoreAsync(EstimatorContext db, JobRow row, JobEdit edit, string who, Engine.House.Job job, CancellationToken token)
    {
        var (sequence, now) = (row.Version + 1, _clock.GetUtcNow());
        JobRows.Set(row, job, who, now);
        db.JobEdits.Add(JobRows.Edit(row, sequence, edit, who, now));
        if (sequence % EditsPerSnapshot == 0)
        {
            db.JobSnapshots.Add(JobRows.Snapshot(row, sequence));
        }

        try
        {
            await db.SaveChangesAsync(token);
            return sequence;
        }
        catch (DbUpdateException e) when (LostRace.Is(e))
        {
            return null;
        }
    }
}
