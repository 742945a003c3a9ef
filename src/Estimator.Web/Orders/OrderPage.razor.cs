using System.Collections.Immutable;
using Estimator.Data.Jobs;
using Estimator.Web.Catalogues;
using Estimator.Web.Explanations;
using Estimator.Web.Jobs;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Orders;

/// <summary>Marks jobs and shows what they buy together. The marks stand in the address, so that reloading keeps them.</summary>
public sealed partial class OrderPage : IDisposable
{
    private static readonly ImmutableArray<(string File, string Title, string What)> Files =
    [
        ("order.xlsx", "Order workbook", "by supplier, with cut plan"), ("order.csv", "Order as CSV", "a row a pack size"), ("cut-plan.csv", "Cut plan as CSV", "a row a piece"),
    ];

    private readonly CancellationTokenSource _gone = new();
    private ImmutableArray<JobSummary>? _jobs;
    private JointOrder? _order;
    private string? _problem;
    private bool _working;
    private int _turn;

    /// <summary>Ids of the marked jobs.</summary>
    [SupplyParameterFromQuery(Name = "job")]
    public string[]? Marked { get; set; }

    [Inject]
    private JobStore Store { get; set; } = default!;

    [Inject]
    private EstimateShelf Estimates { get; set; } = default!;

    [Inject]
    private CatalogueShelf Catalogues { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [Inject]
    private Explainer Explainer { get; set; } = default!;

    private IReadOnlyList<string> Chosen => [.. (_jobs ?? []).Select(j => j.Id).Where(id => Marked?.Contains(id, StringComparer.Ordinal) ?? false)];

    /// <inheritdoc/>
    public void Dispose()
    {
        Catalogues.Changed -= OnCatalogue;
        _gone.Cancel();
        _gone.Dispose();
    }

    /// <inheritdoc/>
    protected override void OnInitialized() => Catalogues.Changed += OnCatalogue;

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        _jobs ??= [.. (await Store.ListAsync(JobFilter.All, _gone.Token)).Where(j => j.LastRevision is not null)];
        await OrderAsync();
    }

    private void Choose(string jobId, bool on) =>
        Navigation.NavigateTo(OrderFiles.Address("/order", _jobs!.Value.Select(j => j.Id).Where(id => id == jobId ? on : Chosen.Contains(id))));

    private async Task OrderAsync()
    {
        var turn = ++_turn;
        Explainer.Close();
        (_problem, _order, _working) = (null, null, Chosen.Count > 0);
        if (!_working)
        {
            return;
        }

        StateHasChanged();
        var papers = await OrderFiles.PapersAsync(Chosen, Store, Estimates, _gone.Token);
        var order = await Task.Run(() => JointOrder.Of(papers, Catalogues.Current), _gone.Token);

        // Other jobs may have been marked meanwhile: the newest marks count.
        if (turn == _turn)
        {
            var wrong = papers.FirstOrDefault(p => !p.Agrees);
            (_working, _order, _problem) = (false, wrong is null ? order : null, wrong is null ? null : $"{wrong.Saved.Job.Name}: {wrong.Disagreement}");
        }
    }

    private void OnCatalogue() => _ = InvokeAsync(async () =>
    {
        await OrderAsync();
        StateHasChanged();
    });
}
