using System.Collections.Immutable;
using Estimator.Data.Contracts;
using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;
using Estimator.Engine.Payments;
using Estimator.Web.Catalogues;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;

namespace Estimator.Web.Contracts;

/// <summary>An invoice: what it asks for, its documents, and what happened to it.</summary>
public sealed partial class InvoicePage
{
    private string? _amount;
    private (int Number, ExplainedInvoice Invoice)? _explained;

    private StoredInvoice? Stored => Contract?.Invoices.FirstOrDefault(i => i.Number == Number);

    /// <summary>Address of an invoice.</summary>
    public static string Address(string jobId, int number) => FormattableString.Invariant($"/jobs/{Uri.EscapeDataString(jobId)}/contract/invoices/{number}");

    // The account as the invoice met it: what is agreed since is in no line of it.
    private ExplainedInvoice Explained(StoredInvoice stored)
    {
        if (_explained?.Number != stored.Number)
        {
            var account = Contract!.Account!;
            ImmutableArray<ContractLine> lines = stored.Issued.Invoice.Lines.IsEmpty ? account.Lines : [.. stored.Issued.Invoice.Lines.Select(l => new ContractLine(l.Id, l.Title, l.Value))];
            var earlier = Contract.Standing.TakeWhile(i => i.Number != stored.Number).Select(i => i.Issued.Invoice);
            _explained = (stored.Number, InvoiceExplaining.Of(account with { Lines = lines, Billed = [.. earlier] }, stored.Issued.Invoice));
        }

        return _explained.Value.Invoice;
    }

    private FigureSource Source(StoredInvoice stored) => new(new ExplanationBook([Explained(stored).Page]), Desk.Job);

    private IEnumerable<(string What, Fact Amount)> Sums(StoredInvoice stored)
    {
        var e = Explained(stored);
        (string, Fact Amount)[] sums = [("Deposit before the work starts", e.Deposit), ("Work billed here", e.Work), ("Less deposit taken off", e.DepositApplied), ("Less retained until the end", e.Retained), ("Retained before, paid now", e.Released)];
        return sums.Where(s => s.Amount.Value != 0);
    }

    private static IEnumerable<(DateOnly On, string What, string Who)> Happened(StoredInvoice stored) => stored.Issued.Events.Select((e, i) =>
        (e.On, $"{e.Kind}{(e.Amount > Money.Zero ? $" {American.Dollars(e.Amount.ToDollars())}" : "")}{(e.Text.Length > 0 ? $", {e.Text}" : "")}", stored.Noted[i]));

    private async Task PaidAsync()
    {
        var amount = _amount is null ? Parsed<Money>.Success(Stored!.Issued.Open) : PriceText.Parse(_amount);
        if (amount.Ok)
        {
            await NoteAsync(new InvoiceEvent(InvoiceEventKind.Paid, On) { Amount = amount.Value, Text = Text });
        }
        else
        {
            Refuse(amount.Problem);
        }
    }

    private async Task NoteAsync(InvoiceEvent happened)
    {
        var noted = await Contracts.NoteAsync(Contract!, Stored!, happened);
        _amount = noted.Ok ? null : _amount;
        await TakeAsync(noted);
    }
}
