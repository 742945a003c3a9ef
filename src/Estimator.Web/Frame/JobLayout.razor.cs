using Estimator.Web.Catalogues;
using Estimator.Web.Explanations;
using Estimator.Web.Jobs;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Frame;

/// <summary>The frame of a job: title block, stage run, the page, and the explanation beside it. It opens the job that the address names.</summary>
public sealed partial class JobLayout : IDisposable
{
    private LoadState _state = LoadState.Loading;
    private string? _jobId;

    private enum LoadState
    {
        Loading = 1,
        Missing,
        Ready,
    }

    [CascadingParameter]
    private Microsoft.AspNetCore.Components.RouteData? Route { get; set; }

    [Inject]
    private JobDesk Desk { get; set; } = default!;

    [Inject]
    private Explainer Explainer { get; set; } = default!;

    [Inject]
    private JobNews News { get; set; } = default!;

    [Inject]
    private CatalogueShelf Catalogues { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    private string Here => new Uri(Navigation.Uri).AbsolutePath;

    /// <inheritdoc/>
    public void Dispose()
    {
        Desk.Changed -= Redraw;
        Explainer.Changed -= Redraw;
        News.Edited -= OnEdited;
        Catalogues.Changed -= OnCatalogue;
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Desk.Changed += Redraw;
        Explainer.Changed += Redraw;
        News.Edited += OnEdited;
        Catalogues.Changed += OnCatalogue;
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        var wanted = Route?.RouteValues.GetValueOrDefault("JobId") as string;
        if (wanted is null || wanted == _jobId)
        {
            return;
        }

        _jobId = wanted;
        _state = LoadState.Loading;
        Explainer.Close();
        _state = await Desk.OpenAsync(wanted) ? LoadState.Ready : LoadState.Missing;
    }

    private void Redraw() => _ = InvokeAsync(StateHasChanged);

    private void OnCatalogue() => _ = InvokeAsync(Desk.Reprice);

    private void OnEdited(string jobId, object by)
    {
        if (jobId == _jobId && !ReferenceEquals(by, Desk))
        {
            _ = InvokeAsync(() => Desk.RefreshAsync());
        }
    }
}
