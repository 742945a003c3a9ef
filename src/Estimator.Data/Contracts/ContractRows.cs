using Estimator.Data.Databases;
using Estimator.Data.Jobs;
using Estimator.Engine.Contracts;
using Estimator.Engine.Payments;

namespace Estimator.Data.Contracts;

/// <summary>Between what a contract is made of and its rows.</summary>
internal static class ContractRows
{
    internal static BidEvent Event(BidEventRow r) => new(Word.Read<BidEventKind>(r.Kind), r.On) { To = r.To, Text = r.Text };

    internal static SentBid Sent(SentBidRow r) => new(
        r.Revision, [.. r.Lines!.OrderBy(l => l.Line).Select(l => new ContractLine(l.LineId, l.Title, Scaled.MoneyFromE4(l.ValueE4)))],
        new ContractTerms(Scaled.MoneyFromE4(r.DepositE4), Scaled.FromE4(r.RetainagePercentE4), r.DaysToPay, Scaled.FromE4(r.LateChargePercentE4)), r.ValidDays);

    internal static SentBidRow New(SentBid bid, string jobId, long company) => new()
    {
        CompanyId = company,
        JobId = jobId,
        Revision = bid.Revision,
        DepositE4 = Scaled.ToE4(bid.Terms.Deposit),
        RetainagePercentE4 = Scaled.ToE4(bid.Terms.RetainagePercent),
        DaysToPay = bid.Terms.DaysToPay,
        LateChargePercentE4 = Scaled.ToE4(bid.Terms.LateChargePercent),
        ValidDays = bid.ValidDays,
        Lines = [.. bid.Lines.Select((l, i) => new SentBidLineRow { CompanyId = company, Line = i + 1, LineId = StorableText.Of(l.Id), Title = StorableText.Of(l.Title), ValueE4 = Scaled.ToE4(l.Value) })],
    };

    internal static StoredChange Change(ChangeOrderRow r)
    {
        var events = r.Events!.OrderBy(e => e.Sequence).ToList();
        var lines = r.Lines!.OrderBy(l => l.Line).Select(l => new ChangeLine(Word.Read<ChangeLineKind>(l.Kind), l.Text, Scaled.FromE4(l.QuantityE4), l.Unit, l.AmountE4 is { } e4 ? Scaled.MoneyFromE4(e4) : null));
        return new StoredChange(
            r.Number, new ChangeOrder(r.FromRevision, r.ToRevision, [.. lines], Scaled.MoneyFromE4(r.PriceE4), r.Days, r.Reason, [.. events.Select(e => new ChangeEvent(Word.Read<ChangeEventKind>(e.Kind), e.On) { Text = e.Text })]),
            [.. events.Select(e => e.Who)], r.Who, JobRows.Utc(r.AtUtcTicks));
    }

    internal static ChangeOrderRow New(ChangeOrder change, string jobId, int number, string who, long company, DateTimeOffset now) => new()
    {
        CompanyId = company,
        JobId = jobId,
        Number = number,
        FromRevision = change.From,
        ToRevision = change.To,
        PriceE4 = Scaled.ToE4(change.Price),
        Days = change.Days,
        Reason = StorableText.Of(change.Reason),
        Who = StorableText.Of(who),
        AtUtcTicks = now.UtcTicks,
        Version = 1,
        Events = [],
        Lines =
        [
            .. change.Lines.Select((l, i) => new ChangeLineRow
            {
                CompanyId = company, Line = i + 1, Kind = Word.Of(l.Kind), Text = StorableText.Of(l.Text), QuantityE4 = Scaled.ToE4(l.Quantity), Unit = l.Unit, AmountE4 = l.Amount is { } a ? Scaled.ToE4(a) : null,
            }),
        ],
    };

    internal static StoredInvoice Invoice(InvoiceRow r)
    {
        var events = r.Events!.OrderBy(e => e.Sequence).ToList();
        var lines = r.Lines!.OrderBy(l => l.Line).Select(l => new InvoiceLine(l.LineId, l.Title, Scaled.MoneyFromE4(l.ValueE4), Scaled.MoneyFromE4(l.BeforeE4), Scaled.MoneyFromE4(l.NowE4)));
        var invoice = new Invoice(Word.Read<InvoiceKind>(r.Kind), [.. lines], Scaled.MoneyFromE4(r.DepositE4), Scaled.MoneyFromE4(r.DepositAppliedE4), Scaled.MoneyFromE4(r.RetainedE4), Scaled.MoneyFromE4(r.ReleasedE4));
        var happened = events.Select(e => new InvoiceEvent(Word.Read<InvoiceEventKind>(e.Kind), e.On) { Amount = Scaled.MoneyFromE4(e.AmountE4), Text = e.Text });
        return new StoredInvoice(r.Number, new IssuedInvoice(invoice, [.. happened]), [.. events.Select(e => e.Who)], r.Who, JobRows.Utc(r.AtUtcTicks));
    }

    internal static InvoiceRow New(Invoice invoice, string jobId, int number, int place, string who, long company, DateTimeOffset now) => new()
    {
        CompanyId = company,
        Number = number,
        JobId = jobId,
        Place = place,
        Kind = Word.Of(invoice.Kind),
        DepositE4 = Scaled.ToE4(invoice.Deposit),
        DepositAppliedE4 = Scaled.ToE4(invoice.DepositApplied),
        RetainedE4 = Scaled.ToE4(invoice.Retained),
        ReleasedE4 = Scaled.ToE4(invoice.Released),
        Who = StorableText.Of(who),
        AtUtcTicks = now.UtcTicks,
        Version = 1,
        Events = [],
        Lines = [.. invoice.Lines.Select((l, i) => new InvoiceLineRow { CompanyId = company, Line = i + 1, LineId = l.Id, Title = StorableText.Of(l.Title), ValueE4 = Scaled.ToE4(l.Value), BeforeE4 = Scaled.ToE4(l.Before), NowE4 = Scaled.ToE4(l.Now) })],
    };
}
