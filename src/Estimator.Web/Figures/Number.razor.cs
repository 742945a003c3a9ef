using Estimator.Engine.Explanations;
using Estimator.Web.Explanations;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Figures;

/// <summary>A figure that explains itself: a button that opens what it is made of, beside it.</summary>
public sealed partial class Number
{
    private FigureText _text;
    private string? _was;
    private Fact? _shown;
    private bool _wasOpen;
    private CancellationTokenSource? _showing;

    /// <summary>The figure.</summary>
    [Parameter, EditorRequired]
    public Fact Of { get; set; }

    /// <summary>How closely it is shown.</summary>
    [Parameter]
    public FigureForm Form { get; set; } = FigureForm.Table;

    /// <summary>What it is, for the head of the explanation and for readers of the screen by ear; left out, the rule's own label.</summary>
    [Parameter]
    public string? Label { get; set; }

    /// <summary>Where it belongs, such as a room.</summary>
    [Parameter]
    public string Context { get; set; } = "";

    /// <summary>Another unit than the figure's own; an empty text shows none.</summary>
    [Parameter]
    public string? Unit { get; set; }

    /// <summary>Whether the unit is left away, because the column's head says it.</summary>
    [Parameter]
    public bool NoSuffix { get; set; }

    /// <summary>Whether it rests on an assumed layout.</summary>
    [Parameter]
    public bool Assumed { get; set; }

    /// <summary>Whether a changed value shows the old one struck beside it for a few seconds.</summary>
    [Parameter]
    public bool ShowsChange { get; set; }

    /// <summary>Further classes.</summary>
    [Parameter]
    public string Class { get; set; } = "";

    /// <summary>Another source than the page's.</summary>
    [Parameter]
    public FigureSource? Source { get; set; }

    [CascadingParameter]
    private FigureSource? PageSource { get; set; }

    [Inject]
    private Explainer Explainer { get; set; } = default!;

    [Inject]
    private TimeProvider Clock { get; set; } = default!;

    private FigureSource? From => Source ?? PageSource;

    private bool IsOpen => Explainer.IsOpen(this);

    private string Suffix => Unit ?? _text.Suffix;

    private string Title => IsOpen ? "Close the explanation" : "What is behind it";

    private string Spoken => string.Join(", ", new[] { Label, Context, $"{_text.Number} {Suffix}".Trim() }.Where(s => !string.IsNullOrEmpty(s)));

    /// <inheritdoc/>
    public void Dispose()
    {
        Explainer.Changed -= OnExplainerChanged;
        _showing?.Cancel();
        _showing?.Dispose();
        if (IsOpen)
        {
            Explainer.Close();
        }
    }

    /// <inheritdoc/>
    protected override void OnInitialized() => Explainer.Changed += OnExplainerChanged;

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        var text = FigureText.Of(Of, Form);
        if (ShowsChange && _shown is not null && text != _text)
        {
            _ = ShowOldAsync(_text.Number);
        }

        _text = text;
        // An open explanation follows its number to the newest estimate.
        if (IsOpen && _shown != Of && From is { } source)
        {
            Explainer.Open(Figure(source));
        }

        _shown = Of;
    }

    private void Toggle()
    {
        if (IsOpen)
        {
            Explainer.Close();
        }
        else if (From is { } source)
        {
            Explainer.Open(Figure(source));
        }
    }

    private OpenedFigure Figure(FigureSource source) => new(this, Label ?? source.Book[Of.Node].Label, Context, _text with { Suffix = Suffix }, Of.Node, source);

    private void OnExplainerChanged()
    {
        if (_wasOpen != IsOpen)
        {
            _wasOpen = IsOpen;
            _ = InvokeAsync(StateHasChanged);
        }
    }

    private async Task ShowOldAsync(string old)
    {
        if (_showing is not null)
        {
            await _showing.CancelAsync();
            _showing.Dispose();
        }

        _showing = new CancellationTokenSource();
        _was = old;
        try
        {
            await Task.Delay(TimeSpan.FromSeconds(3), Clock, _showing.Token);
            _was = null;
            await InvokeAsync(StateHasChanged);
        }
        catch (OperationCanceledException)
        {
            // Another change came, or the page went: whoever cancelled shows what holds now.
        }
    }
}
