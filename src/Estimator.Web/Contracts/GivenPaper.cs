using Estimator.Data.Contracts;
using Estimator.Engine.Measures;
using Estimator.Web.Frame;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Contracts;

/// <summary>A page of a paper that is given to the customer, where one notes what happened to it.</summary>
public abstract class GivenPaper : DeskPart
{
    /// <summary>The job.</summary>
    [Parameter]
    public string JobId { get; set; } = "";

    /// <summary>Number of the paper.</summary>
    [Parameter]
    public int Number { get; set; }

    /// <summary>The day of what is noted next.</summary>
    public DateOnly On { get; set; }

    /// <summary>To whom, who signed, why.</summary>
    public string Text { get; set; } = "";

    /// <summary>The acts of a contract.</summary>
    [Inject]
    protected ContractDesk Contracts { get; set; } = default!;

    /// <summary>The contract as it was read last.</summary>
    protected JobContract? Contract { get; private set; }

    /// <summary>What spoke against what was noted last.</summary>
    protected string? Problem { get; private set; }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        On = Contracts.Today;
        Contract = await Contracts.LoadAsync(Gone);
    }

    /// <summary>Shows a refusal; what was typed stays then.</summary>
    protected void Refuse(string problem) => Problem = problem;

    /// <summary>Shows what came of a note.</summary>
    /// <param name="noted">The contract with it, or what speaks against it.</param>
    protected async Task TakeAsync(Parsed<JobContract> noted)
    {
        Problem = noted.Problem;
        (Contract, Text) = noted.Ok ? (noted.Value, "") : (await Contracts.LoadAsync(Gone), Text);
        StateHasChanged();
    }
}
