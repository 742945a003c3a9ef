using Estimator.Data.Contracts;
using Estimator.Engine.Measures;
using Estimator.Web.Figures;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Contracts;

/// <summary>From a saved bid to the last payment: what was sent and what became of it, change orders, invoices.</summary>
public sealed partial class ContractPage
{
    private JobContract? _contract;
    private string? _problem;
    private int? _shown;

    /// <summary>The job.</summary>
    [Parameter]
    public string JobId { get; set; } = "";

    [Inject]
    private ContractDesk Contracts { get; set; } = default!;

    private string Sentence => _contract switch
    {
        null => "",
        { Accepted: { } won } => $"Revision {American.Number(won.Number)} is the contract. What changes is a change order, and what is done is invoiced.",
        { Revisions.IsEmpty: true } => "Save a revision and send it; what was sent is kept as it was, with its documents.",
        _ => "Send a saved revision, and note what became of it.",
    };

    /// <inheritdoc/>
    protected override Task OnParametersSetAsync() => ReadAsync();

    /// <inheritdoc/>
    protected override Task DeskChangedAsync() => _shown == Desk.LastRevision?.Number ? Task.CompletedTask : ReadAsync();

    private static int Noted(JobContract contract) => contract.Revisions.Sum(r => r.Life.Events.Length);

    private async Task ReadAsync()
    {
        _shown = Desk.LastRevision?.Number;
        _contract = await Contracts.LoadAsync(Gone);
    }

    private async Task Take(Parsed<JobContract> done)
    {
        _problem = done.Problem;
        if (done.Ok)
        {
            _contract = done.Value;
        }
        else
        {
            await ReadAsync();
        }

        StateHasChanged();
    }
}
