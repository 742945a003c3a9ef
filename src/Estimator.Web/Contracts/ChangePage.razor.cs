using Estimator.Data.Contracts;
using Estimator.Data.Jobs;
using Estimator.Engine.Contracts;
using Estimator.Web.Jobs;
using Estimator.Web.Revisions;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Contracts;

/// <summary>A change order: what it changes, its document, and what happened to it.</summary>
public sealed partial class ChangePage
{
    private (ChangeOrder Order, ExplainedChange? Change)? _told;

    private ExplainedChange? Told => _told?.Change;

    [Inject]
    private JobStore Jobs { get; set; } = default!;

    [Inject]
    private EstimateShelf Estimates { get; set; } = default!;

    private StoredChange? Stored => Contract?.Changes.FirstOrDefault(c => c.Number == Number);

    /// <summary>Address of a change order.</summary>
    public static string Address(string jobId, int number) => FormattableString.Invariant($"/jobs/{Uri.EscapeDataString(jobId)}/contract/changes/{number}");

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        await base.OnParametersSetAsync();
        if (Stored is { } stored && (_told is not { } told || told.Order.From != stored.Order.From || told.Order.To != stored.Order.To))
        {
            _told = (stored.Order, null);
            StateHasChanged();
            var (from, to) = (await RevisionPaper.LoadAsync(Jobs, Estimates, JobId, stored.Order.From, Gone), await RevisionPaper.LoadAsync(Jobs, Estimates, JobId, stored.Order.To, Gone));
            _told = (stored.Order, from is null || to is null ? null : await Task.Run(() => ExplainedChange.Of(stored.Order, from, to), Gone));
        }
    }

    private static IEnumerable<(DateOnly On, string What, string Who)> Happened(StoredChange stored) =>
        stored.Order.Events.Select((e, i) => (e.On, e.Text.Length > 0 ? $"{e.Kind}, {e.Text}" : $"{e.Kind}", stored.Noted[i]));

    private async Task NoteAsync(ChangeEventKind kind) => await TakeAsync(await Contracts.NoteAsync(Contract!, Stored!, new ChangeEvent(kind, On) { Text = Text }));
}
