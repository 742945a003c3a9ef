using System.Collections.Immutable;
using Estimator.Data.Revisions;
using Estimator.Engine.Contracts;
using Estimator.Engine.Payments;

namespace Estimator.Data.Contracts;

/// <summary>Bids, contract, change orders and invoices of a job.</summary>
/// <param name="Revisions">Saved revisions, the last one first.</param>
/// <param name="Sent">What was offered, by revision.</param>
/// <param name="Changes">Change orders, the first one first.</param>
/// <param name="Invoices">Invoices, the first one first, withdrawn ones among them.</param>
/// <param name="Documents">What was given to the customer and is kept.</param>
public sealed record JobContract(
    ImmutableArray<RevisionSummary> Revisions, ImmutableArray<SentBid> Sent, ImmutableArray<StoredChange> Changes, ImmutableArray<StoredInvoice> Invoices, ImmutableArray<KeptFile> Documents)
{
    /// <summary>The revision that the customer accepted; null while there is none.</summary>
    public RevisionSummary? Accepted => Revisions.FirstOrDefault(r => r.Life.AcceptedOn is not null);

    /// <summary>The revision that holds: of the contract, or of the last accepted change.</summary>
    public int? Holds => AcceptedChanges.Select(c => (int?)c.Order.To).LastOrDefault() ?? Accepted?.Number;

    /// <summary>The change orders that are part of the contract, in the order in which they were written.</summary>
    public IEnumerable<StoredChange> AcceptedChanges => Changes.Where(c => c.Order.State is ChangeState.Accepted);

    /// <summary>What the contract is worth and what was billed of it; null while there is no contract.</summary>
    public ContractAccount? Account => Accepted is { } accepted && Sent.FirstOrDefault(s => s.Revision == accepted.Number) is { } offer
        ? new ContractAccount(
            [.. offer.Lines, .. AcceptedChanges.Select(c => new ContractLine(FormattableString.Invariant($"change-{c.Number}"), FormattableString.Invariant($"Change order {c.Number}"), c.Order.Price))],
            offer.Terms, [.. Standing.Select(i => i.Issued.Invoice)])
        : null;

    /// <summary>The invoices that were not withdrawn.</summary>
    public IEnumerable<StoredInvoice> Standing => Invoices.Where(i => i.Issued.State is not InvoiceState.Withdrawn);
}
