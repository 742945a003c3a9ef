using System.Collections.Immutable;
using Estimator.Data.Companies;
using Estimator.Data.Databases;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Jobs;

/// <summary>Keeps jobs: each as it stands, with the log of its edits, snapshots of it, and its saved revisions.</summary>
/// <remarks>What a method has answered is on the disk. Undo appends the inverse edit; redo the edit again under a new id.</remarks>
public sealed partial class JobStore
{
    /// <summary>A snapshot is kept at each multiple of this many edits, and one of the job as it was made.</summary>
    public const int EditsPerSnapshot = 50;

    private readonly IDbContextFactory<EstimatorContext> _contexts;
    private readonly CurrentCompany _company;
    private readonly TimeProvider _clock;

    internal JobStore(IDbContextFactory<EstimatorContext> contexts, CurrentCompany company, TimeProvider clock) =>
        (_contexts, _company, _clock) = (contexts, company, clock);

    /// <summary>Jobs, last changed first.</summary>
    /// <param name="filter">Which jobs.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task<ImmutableArray<JobSummary>> ListAsync(JobFilter filter, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(filter);
        await using var db = await _contexts.CreateDbContextAsync(token);
        var text = JobRows.SearchText(filter.Text.Trim());
        var state = filter.State is { } wanted ? Word.Of(wanted) : null;
        var rows = await db.Jobs.AsNoTracking()
            .Where(r => r.Archived == filter.Archived && (state == null || r.State == state) && (text == "" || r.SearchText.Contains(text)))
            .OrderByDescending(r => r.ChangedUtcTicks).ThenBy(r => r.Id)
            .Select(r => new
            {
                r.Id,
                r.Name,
                r.State,
                r.Archived,
                r.Version,
                r.CreatedUtcTicks,
                r.ChangedUtcTicks,
                r.ChangedBy,
                Last = db.Revisions.Where(v => v.JobId == r.Id).OrderByDescending(v => v.Number).Select(v => new { v.Number, v.LikelyE4 }).FirstOrDefault(),
            })
            .ToListAsync(token);
        return
        [
            .. rows.Select(r => new JobSummary(
                r.Id, r.Name, Word.Read<JobState>(r.State), r.Archived, r.Version, JobRows.Utc(r.CreatedUtcTicks), JobRows.Utc(r.ChangedUtcTicks), r.ChangedBy,
                r.Last?.Number, r.Last is { } last ? Scaled.MoneyFromE4(last.LikelyE4) : null)),
        ];
    }

    /// <summary>Stores a new job. It keeps its id where that is free and not too long; else it gets the next free one like it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="who">Who makes it.</param>
    /// <param name="token">Ends the wait.</param>
    /// <exception cref="ArgumentException">The job is not one that a job file may hold; the message says what and where.</exception>
    public async Task<StoredJob> CreateAsync(Job job, string who, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(job);
        var wanted = JobIds.Storable(job.Id);
        while (true)
        {
            await using var db = await _contexts.CreateDbContextAsync(token);
            var taken = await db.Jobs.Select(r => r.Id).ToListAsync(token);
            var stored = Checked(job with { Id = JobIds.Free(wanted, taken.ToHashSet(StringComparer.Ordinal)) });
            var row = JobRows.New(stored, _company.Id, who, _clock.GetUtcNow());
            db.Jobs.Add(row);
            db.JobSnapshots.Add(JobRows.Snapshot(row, row.Version));
            try
            {
                await db.SaveChangesAsync(token);
                return new StoredJob(stored, row.Version, [], JobState.Draft, false);
            }
            catch (DbUpdateException e) when (LostRace.Is(e))
            {
                // Another writer took the id in between: the next round sees it.
            }
        }
    }

    /// <summary>A job as it stands; null where there is none with the id.</summary>
    /// <param name="jobId">Its id.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task<StoredJob?> LoadAsync(string jobId, CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        return await db.Jobs.AsNoTracking().SingleOrDefaultAsync(r => r.Id == jobId, token) is { } row ? await StoredAsync(db, row, token) : null;
    }

    /// <summary>A job as it stood at a version; null where there is no such job or version.</summary>
    /// <param name="jobId">Its id.</param>
    /// <param name="version">Sequence of the last edit that counts; 0 for the job as it was made.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task<Job?> LoadAtAsync(string jobId, int version, CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        return await AtAsync(db, jobId, version, token);
    }

    /// <summary>A new job that starts as another stands, with a log of its own.</summary>
    /// <param name="jobId">The job to copy.</param>
    /// <param name="name">Name of the copy.</param>
    /// <param name="who">Who makes it.</param>
    /// <param name="token">Ends the wait.</param>
    /// <returns>The copy; null where there is no job with the id.</returns>
    public async Task<StoredJob?> CopyAsync(string jobId, string name, string who, CancellationToken token = default) =>
        await LoadAsync(jobId, token) is { } stored ? await CreateAsync(stored.Job with { Name = name }, who, token) : null;

    /// <summary>Says where a job stands.</summary>
    /// <param name="jobId">Its id.</param>
    /// <param name="state">The state.</param>
    /// <param name="token">Ends the wait.</param>
    /// <returns>Whether there is such a job.</returns>
    public async Task<bool> SetStateAsync(string jobId, JobState state, CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        var word = Word.Of(state);
        return await db.Jobs.Where(r => r.Id == jobId).ExecuteUpdateAsync(set => set.SetProperty(r => r.State, word), token) > 0;
    }

    /// <summary>Puts a job into the archive, or back among the working jobs.</summary>
    /// <param name="jobId">Its id.</param>
    /// <param name="archived">Into the archive, or back.</param>
    /// <param name="token">Ends the wait.</param>
    /// <returns>Whether there is such a job.</returns>
    public async Task<bool> SetArchivedAsync(string jobId, bool archived, CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        return await db.Jobs.Where(r => r.Id == jobId).ExecuteUpdateAsync(set => set.SetProperty(r => r.Archived, archived), token) > 0;
    }

    /// <summary>Deletes a job of the archive for good, with its log and its revisions.</summary>
    /// <param name="jobId">Its id.</param>
    /// <param name="token">Ends the wait.</param>
    /// <returns>Whether there was such a job.</returns>
    /// <exception cref="InvalidOperationException">The job is not in the archive.</exception>
    public async Task<bool> DeleteAsync(string jobId, CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        if (await db.Jobs.Where(r => r.Id == jobId && r.Archived).ExecuteDeleteAsync(token) > 0)
        {
            return true;
        }

        return await db.Jobs.AnyAsync(r => r.Id == jobId, token)
            ? throw new InvalidOperationException($"The job {jobId} is not in the archive: archive it first, then delete it.")
            : false;
    }

    // What is stored must be readable again, so it is read once before.
    private static Job Checked(Job job)
    {
        var reading = JobFile.Read(JobFile.Write(job), job.Id);
        return reading.Ok ? reading.Job : throw new ArgumentException(reading.Problems[0].ToString(), nameof(job));
    }

    private static async Task<StoredJob> StoredAsync(EstimatorContext db, JobRow row, CancellationToken token)
    {
        var first = row.Version - StoredJob.LongestTail;
        var tail = await db.JobEdits.AsNoTracking().Where(e => e.JobId == row.Id && e.Sequence > first && e.Sequence <= row.Version)
            .OrderBy(e => e.Sequence).ToListAsync(token);
        return new StoredJob(JobRows.Job(row.Json, row.Id), row.Version, JobRows.Logged(tail), Word.Read<JobState>(row.State), row.Archived);
    }

    private static async Task<Job?> AtAsync(EstimatorContext db, string jobId, int version, CancellationToken token)
    {
        var snapshot = await db.JobSnapshots.AsNoTracking().Where(s => s.JobId == jobId && s.Version <= version)
            .OrderByDescending(s => s.Version).FirstOrDefaultAsync(token);
        if (snapshot is null)
        {
            return null;
        }

        var edits = await db.JobEdits.AsNoTracking().Where(e => e.JobId == jobId && e.Sequence > snapshot.Version && e.Sequence <= version)
            .OrderBy(e => e.Sequence).ToListAsync(token);
        if (snapshot.Version + edits.Count != version)
        {
            return null;
        }

        return JobRows.Logged(edits).Aggregate(JobRows.Job(snapshot.Json, jobId), (job, logged) => Replayed(job, logged, jobId));
    }

    private static Job Replayed(Job job, LoggedEdit logged, string jobId)
    {
        var edited = JobEditing.Apply(job, logged.Edit);
        return edited.Ok ? edited.Job : throw new InvalidDataException($"Edit {logged.Sequence} of job {jobId} cannot be applied again. {edited.Problems[0]}");
    }
}
