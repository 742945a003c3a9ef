using System.Collections.Immutable;
using Estimator.Data.Contracts;
using Estimator.Engine.Explanations;
using Estimator.Engine.Payments;
using Estimator.Web.Catalogues;
using Estimator.Web.Explanations;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Contracts;

/// <summary>An invoice: what it asks for, its documents, and what happened to it.</summary>
public sealed partial class InvoicePage
{
    private JobContract? _contract;
    private string? _problem;
    private DateOnly _on;
    private string _text = "";
    private string? _amount;
    private (int Number, ExplainedInvoice Invoice)? _explained;

    /// <summary>The job.</summary>
    [Parameter]
    public string JobId { get; set; } = "";

    /// <summary>Number of the invoice.</summary>
    [Parameter]
    public int Number { get; set; }

    [Inject]
    private ContractDesk Contracts { get; set; } = default!;

    private StoredInvoice? Stored => _contract?.Invoices.FirstOrDefault(i => i.Number == Number);

    /// <summary>Address of an invoice.</summary>
    public static string Address(string jobId, int number) => FormattableString.Invariant($"/jobs/{Uri.EscapeDataString(jobId)}/contract/invoices/{number}");

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        _on = Contracts.Today;
        _contract = await Contracts.LoadAsync(Gone);
    }

    // The account as the invoice met it: what is agreed since is in no line of it.
    private ExplainedInvoice Explained(StoredInvoice stored)
    {
        if (_explained?.Number != stored.Number)
        {
            var account = _contract!.Account!;
            ImmutableArray<ContractLine> lines = stored.Issued.Invoice.Lines.IsEmpty ? account.Lines : [.. stored.Issued.Invoice.Lines.Select(l => new ContractLine(l.Id, l.Title, l.Value))];
            var earlier = _contract.Standing.TakeWhile(i => i.Number != stored.Number).Select(i => i.Issued.Invoice);
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

    private async Task PaidAsync()
    {
        var amount = _amount is null ? Engine.Measures.Parsed<Engine.Measures.Money>.Success(Stored!.Issued.Open) : PriceText.Parse(_amount);
        _problem = amount.Problem;
        await (amount.Ok ? NoteAsync(new InvoiceEvent(InvoiceEventKind.Paid, _on) { Amount = amount.Value, Text = _text }) : Task.CompletedTask);
    }

    private async Task NoteAsync(InvoiceEvent happened)
    {
        var noted = await Contracts.NoteAsync(_contract!, Stored!, happened);
        _problem = noted.Problem;
        (_contract, _text, _amount) = noted.Ok ? (noted.Value, "", null) : (await Contracts.LoadAsync(Gone), _text, _amount);
        StateHasChanged();
    }
}
