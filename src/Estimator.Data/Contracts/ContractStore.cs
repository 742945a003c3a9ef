using System.Security.Cryptography;
using Estimator.Data.Companies;
using Estimator.Data.Databases;
using Estimator.Data.Jobs;
using Estimator.Data.Revisions;
using Estimator.Engine.Contracts;
using Estimator.Engine.Measures;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Contracts;

/// <summary>Keeps what became of bids, and the change orders and invoices of jobs, with every document that was given to a customer.</summary>
/// <remarks>What happened is added and never changed; states follow from it. Where somebody else was faster, nothing is written and a sentence says so.</remarks>
public sealed partial class ContractStore
{
    private const int Tries = 20;
    private const string Elsewhere = "Somebody else noted something meanwhile; nothing of yours was written. Look at what stands there now.";

    private readonly IDbContextFactory<EstimatorContext> _contexts;
    private readonly CurrentCompany _company;
    private readonly TimeProvider _clock;

    internal ContractStore(IDbContextFactory<EstimatorContext> contexts, CurrentCompany company, TimeProvider clock) => (_contexts, _company, _clock) = (contexts, company, clock);

    /// <summary>All that there is of a job.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task<JobContract> LoadAsync(string jobId, CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        return await ReadAsync(db, jobId, token);
    }

    /// <summary>A document as it was given to the customer; null where none of that name is kept.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="paper">What it was.</param>
    /// <param name="number">Number of the revision, the change order or the invoice.</param>
    /// <param name="file">Name of the file.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task<KeptDocument?> DocumentAsync(string jobId, PaperKind paper, int number, string file, CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        var word = Word.Of(paper);
        return await db.KeptDocuments.AsNoTracking().SingleOrDefaultAsync(r => r.JobId == jobId && r.Paper == word && r.Number == number && r.File == file, token) is { } row
            ? new KeptDocument(row.File, row.MediaType, row.Bytes)
            : null;
    }

    /// <summary>Notes that a bid was sent. What it offers and its documents are kept as they are at the first time.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="offer">What the bid offers.</param>
    /// <param name="sent">The day, to whom, how.</param>
    /// <param name="documents">The documents as they are sent.</param>
    /// <param name="who">Who sends it.</param>
    /// <param name="token">Ends the wait.</param>
    public Task<Parsed<JobContract>> SendAsync(string jobId, SentBid offer, BidEvent sent, IReadOnlyList<KeptDocument> documents, string who, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(offer);
        return NoteAsync(jobId, offer.Revision, sent, who, (db, row) =>
        {
            if (row.Sent is null)
            {
                row.Sent = ContractRows.New(offer, jobId, _company.Id);
                Keep(db, jobId, PaperKind.Bid, offer.Revision, documents);
            }
        }, token);
    }

    /// <summary>Notes what became of a bid that was sent, or that the rough-in of the contract passed.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="revision">The revision.</param>
    /// <param name="happened">What happened.</param>
    /// <param name="who">Who notes it.</param>
    /// <param name="token">Ends the wait.</param>
    public Task<Parsed<JobContract>> NoteAsync(string jobId, int revision, BidEvent happened, string who, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(happened);
        return happened.Kind is BidEventKind.Sent
            ? throw new ArgumentException("A bid is sent with what it offers and its documents.", nameof(happened))
            : NoteAsync(jobId, revision, happened, who, static (_, _) => { }, token);
    }

    private Task<Parsed<JobContract>> NoteAsync(string jobId, int revision, BidEvent happened, string who, Action<EstimatorContext, RevisionRow> also, CancellationToken token) => ChangeAsync(jobId, async (db, contract) =>
    {
        if (contract.Revisions.FirstOrDefault(r => r.Number == revision) is not { } bid)
        {
            return $"There is no revision {revision} of this job.";
        }

        if ((TooLong(happened.To, ContractLimits.To) ?? TooLong(happened.Text, ContractLimits.Note) ?? Contradiction(contract, revision, happened) ?? bid.Life.Refusal(happened)) is { } refusal)
        {
            return refusal;
        }

        var row = await db.Revisions.Include(r => r.Sent).SingleAsync(r => r.JobId == jobId && r.Number == revision, token);
        also(db, row);
        db.BidEvents.Add(new BidEventRow
        {
            CompanyId = _company.Id,
            JobId = jobId,
            Revision = revision,
            Sequence = bid.Life.Events.Length + 1,
            Kind = Word.Of(happened.Kind),
            On = happened.On,
            To = StorableText.Of(happened.To.Trim()),
            Text = StorableText.Of(happened.Text.Trim()),
            Who = StorableText.Of(who),
            AtUtcTicks = _clock.GetUtcNow().UtcTicks,
        });
        return null;
    }, token, ofBids: happened.Kind is not (BidEventKind.RoughInPassed or BidEventKind.TrimmedOut));

    private static string? Contradiction(JobContract contract, int revision, BidEvent happened) =>
        contract.Accepted is { } accepted && accepted.Number != revision && happened.Kind is BidEventKind.Sent or BidEventKind.Accepted
            ? $"Revision {accepted.Number} is the contract already: what a later one changes is a change order." : null;

    private static string? TooLong(string text, int most) => text.Length > most ? $"Found {text.Length} characters; up to {most} are accepted." : null;

    // What was read is checked and written in one transaction; keys and versions tell where somebody else wrote in between.
    private async Task<Parsed<JobContract>> ChangeAsync(string jobId, Func<EstimatorContext, JobContract, Task<string?>> change, CancellationToken token, int tries = 1, bool ofBids = false)
    {
        for (var attempt = 1; ; attempt++)
        {
            await using var db = await _contexts.CreateDbContextAsync(token);
            if (await change(db, await ReadAsync(db, jobId, token)) is { } refusal)
            {
                return Parsed<JobContract>.Failure(refusal);
            }

            try
            {
                await using var transaction = await db.Database.BeginTransactionAsync(token);
                await db.SaveChangesAsync(token);
                var now = await ReadAsync(db, jobId, token);
                if (ofBids)
                {
                    var state = Word.Of(Standing(now));
                    await db.Jobs.Where(r => r.Id == jobId).ExecuteUpdateAsync(set => set.SetProperty(r => r.State, state), token);
                }

                await transaction.CommitAsync(token);
                return Parsed<JobContract>.Success(now);
            }
            catch (DbUpdateException e) when (LostRace.Is(e))
            {
                if (attempt >= tries)
                {
                    return Parsed<JobContract>.Failure(Elsewhere);
                }
            }
        }
    }

    // The last bid that anything happened to says where the job stands.
    private static JobState Standing(JobContract contract) =>
        contract.Accepted is not null ? JobState.Won
        : contract.Revisions.Any(r => LastOf(r) is BidEventKind.Sent) ? JobState.Sent
        : contract.Revisions.Select(LastOf).FirstOrDefault(k => k is not null) is BidEventKind.Declined ? JobState.Lost : JobState.Draft;

    private static BidEventKind? LastOf(RevisionSummary revision) => revision.Life.Events.IsEmpty ? null : revision.Life.Events[^1].Kind;

    private void Keep(EstimatorContext db, string jobId, PaperKind paper, int number, IReadOnlyList<KeptDocument> documents) => db.KeptDocuments.AddRange(documents.Select(d => new KeptDocumentRow
    {
        CompanyId = _company.Id,
        JobId = jobId,
        Paper = Word.Of(paper),
        Number = number,
        File = d.File,
        MediaType = d.MediaType,
        Bytes = d.Bytes,
        Sha256 = Convert.ToHexStringLower(SHA256.HashData(d.Bytes)),
        AtUtcTicks = _clock.GetUtcNow().UtcTicks,
    }));

    private static async Task<JobContract> ReadAsync(EstimatorContext db, string jobId, CancellationToken token)
    {
        var revisions = await db.Revisions.AsNoTracking().Include(r => r.Events).Include(r => r.Sent!.Lines).AsSplitQuery().Where(r => r.JobId == jobId).OrderByDescending(r => r.Number).ToListAsync(token);
        var changes = await db.ChangeOrders.AsNoTracking().Include(r => r.Lines).Include(r => r.Events).AsSplitQuery().Where(r => r.JobId == jobId).OrderBy(r => r.Number).ToListAsync(token);
        var invoices = await db.Invoices.AsNoTracking().Include(r => r.Lines).Include(r => r.Events).AsSplitQuery().Where(r => r.JobId == jobId).OrderBy(r => r.Place).ToListAsync(token);
        var documents = await db.KeptDocuments.AsNoTracking().Where(r => r.JobId == jobId).OrderBy(r => r.AtUtcTicks).ThenBy(r => r.File)
            .Select(r => new { r.Paper, r.Number, r.File, r.Sha256, r.AtUtcTicks }).ToListAsync(token);
        return new JobContract(
            [.. revisions.Select(RevisionRows.Summary)], [.. revisions.Where(r => r.Sent is not null).Select(r => ContractRows.Sent(r.Sent!))], [.. changes.Select(ContractRows.Change)], [.. invoices.Select(ContractRows.Invoice)],
            [.. documents.Select(d => new KeptFile(Word.Read<PaperKind>(d.Paper), d.Number, d.File, d.Sha256, JobRows.Utc(d.AtUtcTicks)))]);
    }
}
