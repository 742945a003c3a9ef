using Estimator.Data.Contracts;
using Estimator.Engine.Contracts;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Contracts;

/// <summary>A change order: what it changes, its document, and what happened to it.</summary>
public sealed partial class ChangePage
{
    private JobContract? _contract;
    private string? _problem;
    private DateOnly _on;
    private string _text = "";

    /// <summary>The job.</summary>
    [Parameter]
    public string JobId { get; set; } = "";

    /// <summary>Number of the change order.</summary>
    [Parameter]
    public int Number { get; set; }

    [Inject]
    private ContractDesk Contracts { get; set; } = default!;

    private StoredChange? Stored => _contract?.Changes.FirstOrDefault(c => c.Number == Number);

    /// <summary>Address of a change order.</summary>
    public static string Address(string jobId, int number) => FormattableString.Invariant($"/jobs/{Uri.EscapeDataString(jobId)}/contract/changes/{number}");

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        _on = Contracts.Today;
        _contract = await Contracts.LoadAsync(Gone);
    }

    private async Task NoteAsync(ChangeEventKind kind)
    {
        var noted = await Contracts.NoteAsync(_contract!, Stored!, new ChangeEvent(kind, _on) { Text = _text });
        _problem = noted.Problem;
        (_contract, _text) = noted.Ok ? (noted.Value, "") : (await Contracts.LoadAsync(Gone), _text);
        StateHasChanged();
    }
}
