using Estimator.Data.Databases;
using Estimator.Engine.Contracts;
using Estimator.Engine.Measures;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Contracts;

/// <summary>Change orders.</summary>
public sealed partial class ContractStore
{
    /// <summary>Writes a change order; it gets the job's next number.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="change">What changes; what happened to it is not taken over.</param>
    /// <param name="who">Who writes it.</param>
    /// <param name="token">Ends the wait.</param>
    public Task<Parsed<JobContract>> WriteChangeAsync(string jobId, ChangeOrder change, string who, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(change);
        return ChangeAsync(jobId, (db, contract) =>
        {
            var refusal = TooLong(change.Reason, ContractLimits.Note) ?? WrittenRefusal(contract, change);
            if (refusal is null)
            {
                db.ChangeOrders.Add(ContractRows.New(change, jobId, contract.Changes.Length + 1, who, _company.Id, _clock.GetUtcNow()));
            }

            return Task.FromResult(refusal);
        }, token);
    }

    /// <summary>Notes what happened to a change order.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="number">Number of the change order.</param>
    /// <param name="happened">What happened.</param>
    /// <param name="documents">Where it is sent: the documents as they are sent.</param>
    /// <param name="who">Who notes it.</param>
    /// <param name="token">Ends the wait.</param>
    public Task<Parsed<JobContract>> NoteChangeAsync(string jobId, int number, ChangeEvent happened, IReadOnlyList<KeptDocument> documents, string who, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(happened);
        return ChangeAsync(jobId, async (db, contract) =>
        {
            if (contract.Changes.FirstOrDefault(c => c.Number == number) is not { } change)
            {
                return $"There is no change order {number} of this job.";
            }

            if ((TooLong(happened.Text, ContractLimits.Note) ?? change.Order.Refusal(happened) ?? AcceptedRefusal(contract, change.Order, happened)) is { } refusal)
            {
                return refusal;
            }

            var row = await db.ChangeOrders.Include(r => r.Events).SingleAsync(r => r.JobId == jobId && r.Number == number, token);
            if (row.EventCount != change.Order.Events.Length)
            {
                return Elsewhere;
            }

            row.Events!.Add(new ChangeEventRow
            {
                CompanyId = _company.Id,
                Sequence = ++row.EventCount,
                Kind = Word.Of(happened.Kind),
                On = happened.On,
                Text = StorableText.Of(happened.Text.Trim()),
                Who = StorableText.Of(who),
                AtUtcTicks = _clock.GetUtcNow().UtcTicks,
            });
            if (happened.Kind is ChangeEventKind.Sent)
            {
                Keep(db, jobId, PaperKind.Change, number, documents);
            }

            return null;
        }, token);
    }

    private static string? WrittenRefusal(JobContract contract, ChangeOrder change) =>
        contract.Holds is not { } holds ? "There is no contract yet: what is not agreed is changed in the bid."
        : change.From != holds ? $"Found a change from revision {change.From}; revision {holds} holds, and a change of that one is accepted."
        : contract.Revisions.All(r => r.Number != change.To) || change.To <= change.From ? $"Found a change to revision {change.To}; a saved revision after revision {change.From} is accepted."
        : contract.Account is { Closed: true } ? "The last invoice was written: what comes after it is a job of its own."
        : change.Days is < 0 or > ContractLimits.Days ? $"Found {change.Days} days; 0 to {ContractLimits.Days} are accepted."
        : contract.Changes.FirstOrDefault(c => c.Order.Pending) is { } pending ? $"Change order {pending.Number} is open: note what became of it, or withdraw it, first." : null;

    private static string? AcceptedRefusal(JobContract contract, ChangeOrder change, ChangeEvent happened) =>
        happened.Kind is ChangeEventKind.Accepted && contract.Account is { Closed: true } ? "The last invoice was written: what comes after it is a job of its own."
        : happened.Kind is ChangeEventKind.Accepted && contract.Holds != change.From ? $"Revision {contract.Holds} holds now: withdraw this change order and write a new one." : null;
}
