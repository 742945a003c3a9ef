using Estimator.Data.Databases;
using Estimator.Engine.Measures;
using Estimator.Engine.Payments;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Contracts;

/// <summary>Invoices.</summary>
public sealed partial class ContractStore
{
    /// <summary>Writes an invoice; it gets the company's next number.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="make">Makes it from the account as it stands; it may be called again where somebody else was faster.</param>
    /// <param name="who">Who writes it.</param>
    /// <param name="token">Ends the wait.</param>
    public Task<Parsed<JobContract>> WriteInvoiceAsync(string jobId, Func<ContractAccount, Parsed<Invoice>> make, string who, CancellationToken token = default) => ChangeAsync(jobId, async (db, contract) =>
    {
        if (contract.Account is not { } account)
        {
            return "There is no contract yet: note first that the bid was accepted.";
        }

        var made = make(account);
        if (made.Ok)
        {
            var number = Math.Max(ContractLimits.FirstInvoice, (await db.Invoices.MaxAsync(r => (int?)r.Number, token) ?? 0) + 1);
            db.Invoices.Add(ContractRows.New(made.Value, jobId, number, contract.Invoices.Length + 1, who, _company.Id, _clock.GetUtcNow()));
        }

        return made.Problem;
    }, token, Tries);

    /// <summary>Notes what happened to an invoice.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="number">Number of the invoice.</param>
    /// <param name="happened">What happened.</param>
    /// <param name="documents">Where it is sent: the documents as they are sent.</param>
    /// <param name="who">Who notes it.</param>
    /// <param name="token">Ends the wait.</param>
    public Task<Parsed<JobContract>> NoteInvoiceAsync(string jobId, int number, InvoiceEvent happened, IReadOnlyList<KeptDocument> documents, string who, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(happened);
        return ChangeAsync(jobId, async (db, contract) =>
        {
            if (contract.Invoices.FirstOrDefault(i => i.Number == number) is not { } invoice)
            {
                return $"There is no invoice {number} of this job.";
            }

            if ((TooLong(happened.Text, ContractLimits.Note) ?? invoice.Issued.Refusal(happened) ?? WithdrawalRefusal(contract, invoice, happened)) is { } refusal)
            {
                return refusal;
            }

            var row = await db.Invoices.Include(r => r.Events).SingleAsync(r => r.Number == number, token);
            if (row.EventCount != invoice.Issued.Events.Length)
            {
                return Elsewhere;
            }

            row.Events!.Add(new InvoiceEventRow
            {
                CompanyId = _company.Id,
                Sequence = ++row.EventCount,
                Kind = Word.Of(happened.Kind),
                On = happened.On,
                AmountE4 = Scaled.ToE4(happened.Amount),
                Text = StorableText.Of(happened.Text.Trim()),
                Who = StorableText.Of(who),
                AtUtcTicks = _clock.GetUtcNow().UtcTicks,
            });
            if (happened.Kind is InvoiceEventKind.Sent)
            {
                Keep(db, jobId, PaperKind.Invoice, number, documents);
            }

            return null;
        }, token);
    }

    // A later invoice says what this one billed before it.
    private static string? WithdrawalRefusal(JobContract contract, StoredInvoice invoice, InvoiceEvent happened) =>
        happened.Kind is InvoiceEventKind.Withdrawn && contract.Standing.Last().Number != invoice.Number ? "A later invoice counts on this one: withdraw that first." : null;
}
