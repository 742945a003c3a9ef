using System.Collections.Immutable;
using Estimator.Data.Companies;
using Estimator.Data.Databases;
using Estimator.Engine.Learning;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Actuals;

/// <summary>Keeps what the company decided on proposals: nothing is deleted, and of each phase, class in it and category one factor at most stands.</summary>
public sealed class OwnUnitStore
{
    private const int Tries = 20;

    private readonly IDbContextFactory<EstimatorContext> _contexts;
    private readonly CurrentCompany _company;
    private readonly TimeProvider _clock;

    internal OwnUnitStore(IDbContextFactory<EstimatorContext> contexts, CurrentCompany company, TimeProvider clock) => (_contexts, _company, _clock) = (contexts, company, clock);

    /// <summary>All decisions, newest first.</summary>
    /// <param name="token">Ends the wait.</param>
    public async Task<ImmutableArray<DecidedUnit>> ListAsync(CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        var rows = await db.OwnUnits.AsNoTracking().ToListAsync(token);
        return [.. rows.OrderByDescending(r => r.Id).Select(Decided)];
    }

    /// <summary>Accepts proposals, or sets them aside, in one act. An accepted one takes the place of the one that stood; one of a whole phase also of those of its classes.</summary>
    /// <param name="proposals">The proposals.</param>
    /// <param name="accepted">Whether they are accepted.</param>
    /// <param name="who">Who decides.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task DecideAsync(IReadOnlyCollection<Proposal> proposals, bool accepted, string who, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(proposals);
        foreach (var proposal in proposals)
        {
            FieldLimits.Text(proposal.Key, 1, ActualsLimits.Key, nameof(proposal.Key));
        }

        for (var attempt = 1; ; attempt++)
        {
            await using var db = await _contexts.CreateDbContextAsync(token);
            var now = _clock.GetUtcNow().UtcTicks;
            if (accepted)
            {
                await EndAsync(db, proposals, StorableText.Of(who), now, token);
            }

            var last = await db.OwnUnits.MaxAsync(r => (int?)r.Id, token) ?? 0;
            db.OwnUnits.AddRange(proposals.Select((p, i) => new OwnUnitRow
            {
                CompanyId = _company.Id,
                Id = last + 1 + i,
                Kind = Word.Of(p.Kind),
                Key = p.Key,
                Accepted = accepted,
                FactorE4 = Scaled.ToE4(p.Pooled.Factor),
                LowE4 = Scaled.ToE4(p.Pooled.Low),
                HighE4 = Scaled.ToE4(p.Pooled.High),
                Jobs = [.. p.Jobs],
                Who = StorableText.Of(who),
                AtUtcTicks = now,
                Version = 1,
            }));
            try
            {
                await db.SaveChangesAsync(token);
                return;
            }
            catch (DbUpdateException e) when (LostRace.Is(e) && attempt < Tries)
            {
                // Somebody else decided meanwhile: his is ended in its turn.
            }
        }
    }

    /// <summary>Withdraws a factor; later estimates take the table again. One that does not stand is no error.</summary>
    /// <param name="id">Its number.</param>
    /// <param name="who">Who withdraws it.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task WithdrawAsync(int id, string who, CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        if (await db.OwnUnits.SingleOrDefaultAsync(r => r.Id == id && r.EndedUtcTicks == null, token) is { } row)
        {
            (row.EndedBy, row.EndedUtcTicks) = (StorableText.Of(who), _clock.GetUtcNow().UtcTicks);
            await db.SaveChangesAsync(token);
        }
    }

    private static async Task EndAsync(EstimatorContext db, IReadOnlyCollection<Proposal> proposals, string who, long now, CancellationToken token)
    {
        var keys = proposals.Select(p => (Kind: Word.Of(p.Kind), p.Key)).ToHashSet();
        foreach (var standing in await db.OwnUnits.Where(r => r.Accepted && r.EndedUtcTicks == null).ToListAsync(token))
        {
            if (keys.Contains((standing.Kind, standing.Key)) || keys.Contains((standing.Kind, UnitKey.PhaseOf(standing.Key))))
            {
                (standing.EndedBy, standing.EndedUtcTicks) = (who, now);
            }
        }
    }

    private static DecidedUnit Decided(OwnUnitRow row) => new(
        row.Id,
        new Proposal(Word.Read<LearnedKind>(row.Kind), row.Key, new Pooled(row.Jobs.Count, Scaled.FromE4(row.FactorE4), Scaled.FromE4(row.LowE4), Scaled.FromE4(row.HighE4)), [.. row.Jobs]),
        row.Accepted, row.Who, new DateTimeOffset(row.AtUtcTicks, TimeSpan.Zero), row.EndedBy, row.EndedUtcTicks is { } ended ? new DateTimeOffset(ended, TimeSpan.Zero) : null);
}
