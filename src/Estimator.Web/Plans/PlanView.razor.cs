using Estimator.Web.Jobs;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Estimator.Web.Plans;

/// <summary>The plan of a job: the picture, what can be chosen on it, and the same facts as tables.</summary>
public sealed partial class PlanView : IAsyncDisposable
{
    /// <summary>No circuit in hand: all are drawn alike.</summary>
    public const int All = -1;

    private PricedJob? _drawn;
    private PlanSheet _sheet = default!;
    private PlanFigures _figures = default!;
    private ElementReference _root;
    private IJSObjectReference? _module;
    private IJSObjectReference? _hands;
    private int _level;
    private int _inHand = All;
    private bool _tables;
    private HashSet<string> _sought = [];

    /// <summary>The job with everything worked out.</summary>
    [Parameter, EditorRequired]
    public PricedJob Priced { get; set; } = default!;

    /// <summary>Ids of what the reader came to see.</summary>
    [Parameter]
    public string[]? Find { get; set; }

    [Inject]
    private IJSRuntime Script { get; set; } = default!;

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        try
        {
            if (_hands is not null)
            {
                await _hands.InvokeVoidAsync("dispose");
                await _hands.DisposeAsync();
            }

            if (_module is not null)
            {
                await _module.DisposeAsync();
            }
        }
        catch (JSDisconnectedException)
        {
            // The browser is gone, and what it held with it.
        }
    }

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        var sought = !_sought.SetEquals(Find ?? []);
        if (ReferenceEquals(_drawn, Priced) && !sought)
        {
            return;
        }

        if (_drawn is null)
        {
            _level = FirstLevel();
        }

        if (sought)
        {
            _sought = [.. Find ?? []];
            _level = PlanSearch.LevelOf(Priced.Estimate, Find ?? []) ?? _level;
            _inHand = PlanSearch.CircuitOf(Priced.Estimate, _sought) ?? All;
        }

        _drawn = Priced;
        _level = Math.Clamp(_level, 0, Priced.Estimate.House.Levels.Length - 1);
        _inHand = _inHand < Priced.Estimate.Wiring.Circuits.Length ? _inHand : All;
        _figures = PlanFigures.Of(Priced);
        _sheet = PlanDrawing.Of(Priced.Estimate, _level);
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            _module = await Script.InvokeAsync<IJSObjectReference>("import", "./Plans/PlanView.razor.js");
            _hands = await _module.InvokeAsync<IJSObjectReference>("attach", _root);
        }
    }

    private int FirstLevel()
    {
        var levels = Priced.Estimate.House.Levels;
        return levels.Where(l => l.Rooms.Length > 0).OrderBy(l => l.Source.Basement && levels.Length > 1).Select(l => l.Index).FirstOrDefault();
    }

    private void ChooseLevel(int level)
    {
        _level = level;
        _sheet = PlanDrawing.Of(Priced.Estimate, level);
    }

    // A circuit that has nothing on the sheet in sight brings its own level with it.
    private void ChooseCircuit(int circuit)
    {
        _inHand = circuit;
        if (circuit != All && _sheet.Runs.All(r => r.Circuit != circuit))
        {
            ChooseLevel(Priced.Estimate.Wiring.Boxes[Priced.Estimate.Wiring.Circuits[circuit].Boxes[0]].Place.Level);
        }
    }
}
