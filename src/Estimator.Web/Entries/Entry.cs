using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Entries;

/// <summary>A place where one thing of the job is stated. What was typed stays until it is accepted; what is wrong with it stands below.</summary>
public abstract class Entry : ComponentBase
{
    private string? _seen;
    private bool _making;

    /// <summary>What is stated here; read aloud, and shown where <see cref="Labelled"/>.</summary>
    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    /// <summary>What the job holds.</summary>
    [Parameter]
    public string Value { get; set; } = "";

    /// <summary>Makes the edit; answers what is wrong with the text, or null where it was accepted.</summary>
    [Parameter, EditorRequired]
    public Func<string, Task<string?>> State { get; set; } = default!;

    /// <summary>Whether the label stands above it.</summary>
    [Parameter]
    public bool Labelled { get; set; }

    /// <summary>What is taken where nothing is stated.</summary>
    [Parameter]
    public string? Default { get; set; }

    /// <summary>Unit behind it.</summary>
    [Parameter]
    public string? Unit { get; set; }

    /// <summary>Further classes.</summary>
    [Parameter]
    public string Class { get; set; } = "";

    /// <summary>Text in the field.</summary>
    protected string Text { get; private set; } = "";

    /// <summary>What is wrong with it.</summary>
    protected string? Problem { get; private set; }

    /// <summary>Id of the field on the page.</summary>
    protected string FieldId { get; } = $"e{Guid.NewGuid():N}"[..9];

    /// <summary>Id of the sentence below it, while there is one.</summary>
    protected string? ProblemId => Problem is null ? null : $"{FieldId}p";

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (_seen != Value)
        {
            (_seen, Text, Problem) = (Value, Value, null);
        }
        else if (!_making && Problem is null)
        {
            Text = Value;
        }
    }

    /// <summary>Takes what was typed.</summary>
    protected async Task TakeAsync(string? typed)
    {
        Text = typed ?? "";
        _making = true;
        try
        {
            Problem = await State(Text.Trim());
        }
        finally
        {
            _making = false;
        }

        if (Problem is null)
        {
            Text = Value;
        }
    }
}
