using System.Collections.Immutable;
using Estimator.Data.Companies;
using Estimator.Data.Databases;
using Estimator.Data.Jobs;
using Estimator.Data.Prices;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Learning;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Actuals;

/// <summary>Keeps what was written down of jobs, and which are closed.</summary>
public sealed class ActualsStore
{
    private const int Tries = 20;

    private readonly IDbContextFactory<EstimatorContext> _contexts;
    private readonly CurrentCompany _company;

    internal ActualsStore(IDbContextFactory<EstimatorContext> contexts, CurrentCompany company) => (_contexts, _company) = (contexts, company);

    /// <summary>What was written down of a job.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task<JobActuals> LoadAsync(string jobId, CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        var hours = await db.ActualHours.AsNoTracking().Where(r => r.JobId == jobId).ToListAsync(token);
        var material = await db.UsedMaterial.AsNoTracking().Where(r => r.JobId == jobId).ToListAsync(token);
        var closing = await db.JobClosings.AsNoTracking().SingleOrDefaultAsync(r => r.JobId == jobId, token);
        return new JobActuals(
            [.. hours.Select(h => new ActualHours(h.Id, h.Day, Word.Read<WorkPhase>(h.Phase), Scaled.FromE4(h.HoursE4), h.Note)).OrderBy(h => h.Day).ThenBy(h => h.Id)],
            [.. material.Select(m => new UsedMaterial(m.Item, Scaled.FromE4(m.QuantityE4))).OrderBy(m => m.Item, StringComparer.Ordinal)],
            closing?.ClosedOn);
    }

    /// <summary>Writes hours down.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="entry">The hours; its number is given here.</param>
    /// <param name="token">Ends the wait.</param>
    /// <exception cref="ArgumentException">A field is beyond <see cref="ActualsLimits"/>, or the job is closed.</exception>
    public async Task AddAsync(string jobId, ActualHours entry, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(entry);
        FieldLimits.Text(entry.Note, 0, ActualsLimits.Note, nameof(entry.Note));
        if (entry.Hours is <= 0 or > ActualsLimits.Hours)
        {
            throw new ArgumentException($"Hours is {entry.Hours}; above 0 and up to {ActualsLimits.Hours} is accepted.", nameof(entry));
        }

        for (var attempt = 1; ; attempt++)
        {
            await using var db = await OpenAsync(jobId, token);
            var id = 1 + (await db.ActualHours.Where(r => r.JobId == jobId).MaxAsync(r => (int?)r.Id, token) ?? 0);
            db.ActualHours.Add(new ActualHoursRow
            {
                CompanyId = _company.Id,
                JobId = jobId,
                Id = id,
                Day = entry.Day,
                Phase = Word.Of(entry.Phase),
                HoursE4 = Scaled.ToE4(entry.Hours),
                Note = StorableText.Of(entry.Note.Trim()),
            });
            try
            {
                await db.SaveChangesAsync(token);
                return;
            }
            catch (DbUpdateException e) when (LostRace.Is(e) && attempt < Tries)
            {
                // Somebody else took the number: the next one is tried.
            }
        }
    }

    /// <summary>Takes an entry of hours back; one that is gone already is no error.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="id">The entry's number.</param>
    /// <param name="token">Ends the wait.</param>
    /// <exception cref="ArgumentException">The job is closed.</exception>
    public async Task RemoveAsync(string jobId, int id, CancellationToken token = default)
    {
        await using var db = await OpenAsync(jobId, token);
        await db.ActualHours.Where(r => r.JobId == jobId && r.Id == id).ExecuteDeleteAsync(token);
    }

    /// <summary>Writes down how much of an item was used; zero takes it back.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="used">The material.</param>
    /// <param name="token">Ends the wait.</param>
    /// <exception cref="ArgumentException">A field is beyond <see cref="ActualsLimits"/>, or the job is closed.</exception>
    public async Task PutAsync(string jobId, UsedMaterial used, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(used);
        FieldLimits.Text(used.Item, 1, PriceLimits.Name, nameof(used.Item));
        if (used.Quantity is < 0 or > ActualsLimits.Quantity)
        {
            throw new ArgumentException($"Quantity is {used.Quantity}; 0 to {ActualsLimits.Quantity} is accepted.", nameof(used));
        }

        await using var db = await OpenAsync(jobId, token);
        var row = await db.UsedMaterial.SingleOrDefaultAsync(r => r.JobId == jobId && r.Item == used.Item, token);
        if (row is null)
        {
            row = new UsedMaterialRow { CompanyId = _company.Id, JobId = jobId, Item = StorableText.Of(used.Item) };
            db.UsedMaterial.Add(row);
        }

        row.QuantityE4 = Scaled.ToE4(used.Quantity);
        if (used.Quantity == 0)
        {
            db.UsedMaterial.Remove(row);
        }

        await db.SaveChangesAsync(token);
    }

    /// <summary>Closes a job: what came of it is kept, and nothing more is written down. One that was won stands as finished.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="day">The day.</param>
    /// <param name="outcomes">What came of its parts.</param>
    /// <param name="who">Who closed it.</param>
    /// <param name="token">Ends the wait.</param>
    /// <exception cref="ArgumentException">The job is closed already.</exception>
    public async Task CloseAsync(string jobId, DateOnly day, IEnumerable<JobOutcome> outcomes, string who, CancellationToken token = default)
    {
        await using var db = await OpenAsync(jobId, token);
        db.JobClosings.Add(new JobClosingRow
        {
            CompanyId = _company.Id,
            JobId = jobId,
            ClosedOn = day,
            Who = StorableText.Of(who),
            Outcomes = [.. outcomes.Select(o => new JobOutcomeRow
            {
                CompanyId = _company.Id, JobId = jobId, Kind = Word.Of(o.Kind), Key = o.Key, EstimatedE4 = Scaled.ToE4(o.Estimated), ActualE4 = Scaled.ToE4(o.Actual),
                Classes = [.. o.Classes.Select(c => new JobOutcomeClassRow { CompanyId = _company.Id, JobId = jobId, Kind = Word.Of(o.Kind), Key = o.Key, Class = c.Class, EstimatedE4 = Scaled.ToE4(c.Hours) })],
            })],
        });
        try
        {
            await using var both = await db.Database.BeginTransactionAsync(token);
            await db.SaveChangesAsync(token);
            await MoveAsync(db, jobId, JobState.Won, JobState.Finished, token);
            await both.CommitAsync(token);
        }
        catch (DbUpdateException e) when (LostRace.Is(e))
        {
            throw Closed(jobId, e);
        }
    }

    /// <summary>Opens a closed job again; what came of it counts no more, and one that stands as finished stands as won. One that is open is no error.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task ReopenAsync(string jobId, CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        await using var both = await db.Database.BeginTransactionAsync(token);
        if (await db.JobClosings.Where(r => r.JobId == jobId).ExecuteDeleteAsync(token) > 0)
        {
            await MoveAsync(db, jobId, JobState.Finished, JobState.Won, token);
        }

        await both.CommitAsync(token);
    }

    /// <summary>All closed jobs, newest first.</summary>
    /// <param name="token">Ends the wait.</param>
    public async Task<ImmutableArray<ClosedJob>> ClosedAsync(CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        var names = await db.Jobs.AsNoTracking().Where(j => db.JobClosings.Any(c => c.JobId == j.Id)).Select(j => new { j.Id, j.Name }).ToDictionaryAsync(j => j.Id, j => j.Name, token);
        var closings = await db.JobClosings.AsNoTracking().Include(r => r.Outcomes!).ThenInclude(o => o.Classes).AsSplitQuery().ToListAsync(token);
        return
        [
            .. closings.OrderByDescending(c => c.ClosedOn).ThenBy(c => c.JobId, StringComparer.Ordinal).Select(c => new ClosedJob(
                c.JobId, names.GetValueOrDefault(c.JobId, c.JobId), c.ClosedOn,
                [.. c.Outcomes!.Select(Outcome).OrderBy(o => o.Kind).ThenBy(o => o.Key, StringComparer.Ordinal)])),
        ];
    }

    private static JobOutcome Outcome(JobOutcomeRow row) => new(Word.Read<LearnedKind>(row.Kind), row.Key, Scaled.FromE4(row.EstimatedE4), Scaled.FromE4(row.ActualE4))
    {
        Classes = [.. row.Classes!.Select(c => new ClassHours(c.Class, Scaled.FromE4(c.EstimatedE4))).OrderBy(c => c.Class, StringComparer.Ordinal)],
    };

    private static Task<int> MoveAsync(EstimatorContext db, string jobId, JobState from, JobState to, CancellationToken token)
    {
        var (left, reached) = (Word.Of(from), Word.Of(to));
        return db.Jobs.Where(r => r.Id == jobId && r.State == left).ExecuteUpdateAsync(set => set.SetProperty(r => r.State, reached), token);
    }

    private static ArgumentException Closed(string jobId, Exception? inner = null) => new($"The job {jobId} is closed; open it again to change what was written down.", nameof(jobId), inner);

    private async Task<EstimatorContext> OpenAsync(string jobId, CancellationToken token)
    {
        var db = await _contexts.CreateDbContextAsync(token);
        if (!await db.JobClosings.AnyAsync(r => r.JobId == jobId, token))
        {
            return db;
        }

        await db.DisposeAsync();
        throw Closed(jobId);
    }
}
