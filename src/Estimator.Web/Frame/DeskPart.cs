using Estimator.Web.Jobs;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Frame;

/// <summary>A part of the frame or a page of a job: it is drawn anew whenever something at the desk changes.</summary>
public abstract class DeskPart : ComponentBase, IDisposable
{
    private readonly CancellationTokenSource _gone = new();

    /// <summary>The job at hand.</summary>
    [Inject]
    protected JobDesk Desk { get; set; } = default!;

    /// <summary>Cancelled when the part leaves the page.</summary>
    protected CancellationToken Gone => _gone.Token;

    /// <inheritdoc/>
    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    /// <inheritdoc/>
    protected override void OnInitialized() => Desk.Changed += OnDeskChanged;

    /// <summary>What else to do when something at the desk changed, on the tab's own thread of control.</summary>
    protected virtual Task DeskChangedAsync() => Task.CompletedTask;

    /// <summary>Lets go of the desk.</summary>
    protected virtual void Dispose(bool disposing)
    {
        if (disposing)
        {
            Desk.Changed -= OnDeskChanged;
            _gone.Cancel();
            _gone.Dispose();
        }
    }

    private void OnDeskChanged() => _ = InvokeAsync(async () =>
    {
        await DeskChangedAsync();
        StateHasChanged();
    });
}
