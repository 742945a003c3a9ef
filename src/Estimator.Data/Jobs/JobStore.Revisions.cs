using System.Collections.Immutable;
using System.Text.Json;
using Estimator.Data.Databases;
using Estimator.Data.Revisions;
using Estimator.Engine.Catalogue;
using Estimator.Engine.JobFiles;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Jobs;

/// <summary>The saved revisions.</summary>
public sealed partial class JobStore
{
    /// <summary>Saves a revision: the job as it was priced, its figures, and the lines that SQL sums over jobs.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="revision">What is saved.</param>
    /// <param name="token">Ends the wait.</param>
    /// <returns>The revision; null where there is no job with the id.</returns>
    /// <exception cref="ArgumentException">The estimate was not made from the stored job of that version, or the catalogue cannot be read.</exception>
    public async Task<RevisionSummary?> SaveRevisionAsync(string jobId, NewRevision revision, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(revision);
        var catalogue = PartsCatalogue.Read(revision.CatalogueFiles);
        if (!catalogue.Ok)
        {
            throw new ArgumentException(catalogue.Problem, nameof(revision));
        }

        for (var attempt = 0; attempt < Attempts; attempt++)
        {
            await using var db = await _contexts.CreateDbContextAsync(token);
            if (!await db.Jobs.AnyAsync(r => r.Id == jobId, token))
            {
                return null;
            }

            if (await AtAsync(db, jobId, revision.JobVersion, token) is not { } job || JobFile.Write(job) != JobFile.Write(revision.Estimate.House.Job))
            {
                throw new ArgumentException($"The estimate was not made from version {revision.JobVersion} of job {jobId}.", nameof(revision));
            }

            var last = await db.Revisions.Where(r => r.JobId == jobId).Select(r => (int?)r.Number).MaxAsync(token) ?? 0;
            var row = RevisionRows.New(jobId, _company.Id, last + 1, revision, catalogue.Value.Hash, _clock.GetUtcNow());
            await KeepCatalogueAsync(db, catalogue.Value.Hash, revision.CatalogueFiles, token);
            db.Revisions.Add(row);
            try
            {
                await db.SaveChangesAsync(token);
                return RevisionRows.Summary(row);
            }
            catch (DbUpdateException e) when (LostRace.Is(e))
            {
                // Another writer took the number, or kept the same catalogue: the next round sees it.
            }
        }

        throw new TimeoutException($"The revision of job {jobId} lost {Attempts} races against other writers.");
    }

    /// <summary>Saved revisions of a job, the last one first.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task<ImmutableArray<RevisionSummary>> RevisionsAsync(string jobId, CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        var rows = await db.Revisions.AsNoTracking().Include(r => r.Events).Include(r => r.Sent).AsSplitQuery().Where(r => r.JobId == jobId).OrderByDescending(r => r.Number).ToListAsync(token);
        return [.. rows.Select(RevisionRows.Summary)];
    }

    /// <summary>A saved revision with the job and the catalogue of its price; null where there is none.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="number">The revision's number.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task<SavedRevision?> LoadRevisionAsync(string jobId, int number, CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        var found = await db.Revisions.AsNoTracking().Include(r => r.Events).Include(r => r.Sent).Where(r => r.JobId == jobId && r.Number == number)
            .Join(db.Catalogues, r => r.CatalogueHash, c => c.Hash, (r, c) => new { Revision = r, c.FilesJson }).SingleOrDefaultAsync(token);
        return found is null
            ? null
            : new SavedRevision(
                RevisionRows.Summary(found.Revision), JobRows.Job(found.Revision.JobJson, jobId),
                JsonSerializer.Deserialize<ImmutableSortedDictionary<string, string>>(found.FilesJson)!);
    }

    private async Task KeepCatalogueAsync(EstimatorContext db, string hash, ImmutableSortedDictionary<string, string> files, CancellationToken token)
    {
        if (!await db.Catalogues.AnyAsync(c => c.Hash == hash, token))
        {
            db.Catalogues.Add(new CatalogueRow { CompanyId = _company.Id, Hash = hash, FilesJson = JsonSerializer.Serialize(files) });
        }
    }
}
