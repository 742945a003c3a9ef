using System.Collections.Immutable;
using Estimator.Data.Jobs;
using Estimator.Data.Orders;
using Estimator.Engine.Catalogue;
using Estimator.Web.Catalogues;
using Estimator.Web.Explanations;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Orders;

/// <summary>Marks jobs and shows what they buy together. What is asked stands in the address, so that reloading keeps it.</summary>
public sealed partial class OrderPage : IDisposable
{
    private static readonly ImmutableArray<(string File, string Title, string What)> Files =
    [
        ("order.xlsx", "Order workbook", "by supplier, with cut plan"), ("order.csv", "Order as CSV", "a row a pack size"), ("cut-plan.csv", "Cut plan as CSV", "a row a piece"),
    ];

    private readonly CancellationTokenSource _gone = new();
    private ImmutableArray<JobSummary>? _jobs;
    private ImmutableArray<StoredOrder> _already = [];
    private JointOrder? _order;
    private string? _problem;
    private bool _working;
    private int _turn;

    /// <summary>Ids of the marked jobs.</summary>
    [SupplyParameterFromQuery(Name = "job")]
    public string[]? Marked { get; set; }

    /// <summary>The phase that is bought for.</summary>
    [SupplyParameterFromQuery(Name = "phase")]
    public string? Phase { get; set; }

    /// <summary>How it is divided among suppliers.</summary>
    [SupplyParameterFromQuery(Name = "way")]
    public string? Way { get; set; }

    /// <summary>The preferred supplier.</summary>
    [SupplyParameterFromQuery(Name = "preferred")]
    public string? Preferred { get; set; }

    /// <summary>How much more it may ask.</summary>
    [SupplyParameterFromQuery(Name = "within")]
    public string? Within { get; set; }

    /// <summary>Whether the shelf is used.</summary>
    [SupplyParameterFromQuery(Name = "shelf")]
    public string? Shelf { get; set; }

    [Inject]
    private JobStore Store { get; set; } = default!;

    [Inject]
    private OrderDesk Desk { get; set; } = default!;

    [Inject]
    private CatalogueShelf Catalogues { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [Inject]
    private Explainer Explainer { get; set; } = default!;

    private OrderAsk Ask => OrderAsk.Of([.. (_jobs ?? []).Select(j => j.Id).Where(id => Marked?.Contains(id, StringComparer.Ordinal) ?? false)], Phase, Way, Preferred, Within, Shelf);

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

    private void Choose(string jobId, bool on) => Go(Ask with { Jobs = [.. _jobs!.Value.Select(j => j.Id).Where(id => id == jobId ? on : Ask.Jobs.Contains(id))] });

    private void ChoosePhase(ChangeEventArgs e) => Go(Ask with { Phase = Enum.TryParse<WorkPhase>(e.Value as string, out var phase) ? phase : null });

    private void Go(OrderAsk ask) => Navigation.NavigateTo(ask.Address("/order"));

    private async Task OrderAsync()
    {
        var (turn, ask) = (++_turn, Ask);
        Explainer.Close();
        (_problem, _order, _working) = (null, null, !ask.Jobs.IsEmpty);
        if (!_working)
        {
            return;
        }

        StateHasChanged();
        var made = await Desk.MakeAsync(ask, _gone.Token);

        // Other jobs may have been marked meanwhile: the newest marks count.
        if (turn == _turn)
        {
            var wrong = made?.Order.Papers.FirstOrDefault(p => !p.Agrees);
            (_working, _order, _already) = (false, wrong is null ? made?.Order : null, made?.Already ?? []);
            _problem = wrong is null ? null : $"{wrong.Saved.Job.Name}: {wrong.Disagreement}";
        }
    }

    private void OnCatalogue() => _ = InvokeAsync(async () =>
    {
        await OrderAsync();
        StateHasChanged();
    });
}
