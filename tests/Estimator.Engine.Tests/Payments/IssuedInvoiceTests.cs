using Estimator.Engine.Measures;
using Estimator.Engine.Payments;

namespace Estimator.Engine.Tests.Payments;

public sealed class IssuedInvoiceTests
{
    private static readonly DateOnly Monday = new(2026, 3, 2);
    private static readonly IssuedInvoice Draft = new(new Invoice(InvoiceKind.Deposit, [], Money.FromDollars(500), Money.Zero, Money.Zero, Money.Zero), []);

    [Fact]
    public void State_FollowsFromWhatHappened()
    {
        Assert.Equal(InvoiceState.Draft, Draft.State);
        var sent = Noted(Draft, new(InvoiceEventKind.Sent, Monday));
        Assert.Equal((InvoiceState.Sent, 500m), (sent.State, sent.Open.ToDollars()));
        var part = Noted(sent, new(InvoiceEventKind.Paid, Monday) { Amount = Money.FromDollars(200) });
        Assert.Equal((InvoiceState.PaidInPart, 300m), (part.State, part.Open.ToDollars()));
        Assert.Equal(InvoiceState.Paid, Noted(part, new(InvoiceEventKind.Paid, Monday) { Amount = Money.FromDollars(300) }).State);
        var off = Noted(sent, new(InvoiceEventKind.Withdrawn, Monday));
        Assert.Equal((InvoiceState.Withdrawn, 0m), (off.State, off.Open.ToDollars()));
    }

    [Fact]
    public void Refusal_OfWhatCannotBe_SaysWhatIsAccepted()
    {
        Assert.Contains("send it first", Draft.Refusal(new(InvoiceEventKind.Paid, Monday) { Amount = Money.FromDollars(1) }), StringComparison.Ordinal);
        var sent = Noted(Draft, new(InvoiceEventKind.Sent, Monday));
        Assert.Contains("$0.01 to $500.00", sent.Refusal(new(InvoiceEventKind.Paid, Monday) { Amount = Money.FromDollars(500.01m) }), StringComparison.Ordinal);
        Assert.NotNull(sent.Refusal(new(InvoiceEventKind.Sent, Monday)));
        Assert.NotNull(Noted(sent, new(InvoiceEventKind.Paid, Monday) { Amount = Money.FromDollars(1) }).Refusal(new(InvoiceEventKind.Withdrawn, Monday)));
        Assert.NotNull(Noted(sent, new(InvoiceEventKind.Withdrawn, Monday)).Refusal(new(InvoiceEventKind.Paid, Monday) { Amount = Money.FromDollars(1) }));
    }

    private static IssuedInvoice Noted(IssuedInvoice invoice, InvoiceEvent happened)
    {
        Assert.Null(invoice.Refusal(happened));
        return invoice with { Events = invoice.Events.Add(happened) };
    }
}
