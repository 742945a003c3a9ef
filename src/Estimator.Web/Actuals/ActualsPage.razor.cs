using Estimator.Data.Actuals;
using Estimator.Engine;
using Estimator.Engine.Learning;
using Estimator.Engine.Wiring;
using Estimator.Web.Catalogues;
using Estimator.Web.Jobs;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Actuals;

/// <summary>What a job took.</summary>
public sealed partial class ActualsPage
{
    private readonly HoursDraft _draft = new();
    private JobActuals? _actuals;
    private string? _problem;
    private (PricedJob Priced, JobActuals Actuals, ActualFigures Figures)? _drawn;

    /// <summary>Id of the job.</summary>
    [Parameter]
    public string JobId { get; set; } = "";

    [Inject]
    private ActualsStore Store { get; set; } = default!;

    [Inject]
    private TimeProvider Clock { get; set; } = default!;

    private DateOnly Today => DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        _draft.Day = _draft.Day.Length > 0 ? _draft.Day : Today.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        _actuals = await Store.LoadAsync(JobId, Gone);
    }

    // Drawn once for what is shown: a figure that is made anew with each drawing closes its own explanation.
    private ActualFigures FiguresOf(PricedJob priced, JobActuals actuals)
    {
        if (_drawn is not { } drawn || !ReferenceEquals(drawn.Priced, priced) || !ReferenceEquals(drawn.Actuals, actuals))
        {
            _drawn = drawn = (priced, actuals, ActualFigures.Of(priced, actuals));
        }

        return drawn.Figures;
    }

    private async Task AddAsync()
    {
        var read = _draft.Read();
        if (!read.Ok)
        {
            _problem = read.Problem;
            return;
        }

        await DoAsync(() => Store.AddAsync(JobId, read.Value, Gone));
        if (_problem is null)
        {
            (_draft.Hours, _draft.Note) = ("", "");
        }
    }

    private Task RemoveAsync(int id) => DoAsync(() => Store.RemoveAsync(JobId, id, Gone));

    private async Task PutAsync((string Item, string? Text) typed)
    {
        var read = string.IsNullOrWhiteSpace(typed.Text) ? HoursDraft.Number("0", 0) : HoursDraft.Number(typed.Text, ActualsLimits.Quantity);
        _problem = read.Problem;
        await (read.Ok ? DoAsync(() => Store.PutAsync(JobId, new UsedMaterial(typed.Item, read.Value), Gone)) : Task.CompletedTask);
    }

    // Set against the tables as they are shipped: a factor that was accepted before would else be learned a second time.
    private async Task CloseAsync()
    {
        var (job, actuals) = (Desk.Job, await Store.LoadAsync(JobId, Gone));
        var estimate = await Task.Run(() => JobEstimate.Compute(job, CatalogueShelf.BuiltIn().Parts, SearchDepth.Quick), Gone);
        await DoAsync(() => Store.CloseAsync(JobId, Today, JobOutcomes.Of(estimate, actuals.Hours, actuals.Material), JobDesk.Me, Gone));
        await Desk.RefreshAsync(Gone);
    }

    private async Task ReopenAsync()
    {
        await DoAsync(() => Store.ReopenAsync(JobId, Gone));
        await Desk.RefreshAsync(Gone);
    }

    private async Task DoAsync(Func<Task> act)
    {
        try
        {
            await act();
            _problem = null;
        }
        catch (ArgumentException)
        {
            _problem = "Somebody closed the job meanwhile; nothing of yours was written. What stands is below.";
        }

        _actuals = await Store.LoadAsync(JobId, Gone);
    }
}
