using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Payments;

/// <summary>An invoice and all that happened to it. Its state follows from that.</summary>
/// <param name="Invoice">What it asks for.</param>
/// <param name="Events">What happened, in the order in which it was noted.</param>
public sealed record IssuedInvoice(Invoice Invoice, ImmutableArray<InvoiceEvent> Events)
{
    /// <summary>What was paid.</summary>
    public Money Received => Events.Aggregate(Money.Zero, (sum, e) => sum + e.Amount);

    /// <summary>What is still to be paid.</summary>
    public Money Open => State is InvoiceState.Withdrawn ? Money.Zero : Invoice.Due - Received;

    /// <summary>The day on which it was sent; null for a draft.</summary>
    public DateOnly? SentOn => Events.FirstOrDefault(e => e.Kind is InvoiceEventKind.Sent)?.On;

    /// <summary>How far it is.</summary>
    public InvoiceState State => Events.Any(e => e.Kind is InvoiceEventKind.Withdrawn) ? InvoiceState.Withdrawn
        : SentOn is null ? InvoiceState.Draft
        : Received >= Invoice.Due ? InvoiceState.Paid
        : Received > Money.Zero ? InvoiceState.PaidInPart : InvoiceState.Sent;

    /// <summary>What speaks against noting an event, as a sentence; null where nothing does.</summary>
    /// <param name="happened">The event.</param>
    public string? Refusal(InvoiceEvent happened)
    {
        ArgumentNullException.ThrowIfNull(happened);
        return (happened.Kind, State) switch
        {
            (_, InvoiceState.Withdrawn) => "The invoice was withdrawn: write a new one.",
            (InvoiceEventKind.Sent, InvoiceState.Draft) => null,
            (InvoiceEventKind.Sent, _) => "The invoice was sent already.",
            (InvoiceEventKind.Paid, InvoiceState.Draft) => "The invoice is a draft: send it first.",
            (InvoiceEventKind.Paid, _) => happened.Amount > Money.Zero && happened.Amount <= Open && happened.Amount == happened.Amount.RoundToCents()
                ? null : $"Found {happened.Amount}; $0.01 to {Open} is accepted: that much is open.",
            _ => Received > Money.Zero ? "Money came for it: it can't be withdrawn." : null,
        };
    }
}
