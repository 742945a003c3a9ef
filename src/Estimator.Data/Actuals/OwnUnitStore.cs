using System.Collections.Immutable;
using Estimator.Data.Companies;
using Estimator.Data.Databases;
using Estimator.Engine.Learning;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Actuals;

/// <summary>Keeps what the company decided on proposals: nothing is deleted, and of each phase and category one factor at most stands.</summary>
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

    /// <summary>Accepts a proposal, or sets it aside. An accepted one takes the place of the one that stood.</summary>
    /// <param name="proposal">The proposal.</param>
    /// <param name="accepted">Whether it is accepted.</param>
    /// <param name="who">Who decides.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task DecideAsync(Proposal proposal, bool accepted, string who, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(proposal);
        FieldLimits.Text(proposal.Key, 1, ActualsLimits.Key, nameof(proposal.Key));
        for (var attempt = 1; ; attempt++)
        {
            await using var db = await _contexts.CreateDbContextAsync(token);
            var (kind, now) = (Word.Of(proposal.Kind), _clock.GetUtcNow().UtcTicks);
            if (accepted)
            {
                foreach (var standing in await db.OwnUnits.Where(r => r.Kind == kind && r.Key == proposal.Key && r.Accepted && r.EndedUtcTicks == null).ToListAsync(token))
                {
                    (standing.EndedBy, standing.EndedUtcTicks) = (StorableText.Of(who), now);
                }
            }

            db.OwnUnits.Add(new OwnUnitRow
            {
                CompanyId = _company.Id,
                Id = 1 + (await db.OwnUnits.MaxAsync(r => (int?)r.Id, token) ?? 0),
                Kind = kind,
                Key = proposal.Key,
                Accepted = accepted,
                FactorE4 = Scaled.ToE4(proposal.Pooled.Factor),
                LowE4 = Scaled.ToE4(proposal.Pooled.Low),
                HighE4 = Scaled.ToE4(proposal.Pooled.High),
                Jobs = [.. proposal.Jobs],
                Who = StorableText.Of(who),
                AtUtcTicks = now,
                Version = 1,
            });
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

    private static DecidedUnit Decided(OwnUnitRow row) => new(
        row.Id,
        new Proposal(Word.Read<LearnedKind>(row.Kind), row.Key, new Pooled(row.Jobs.Count, Scaled.FromE4(row.FactorE4), Scaled.FromE4(row.LowE4), Scaled.FromE4(row.HighE4)), [.. row.Jobs]),
        row.Accepted, row.Who, new DateTimeOffset(row.AtUtcTicks, TimeSpan.Zero), row.EndedBy, row.EndedUtcTicks is { } ended ? new DateTimeOffset(ended, TimeSpan.Zero) : null);
}
