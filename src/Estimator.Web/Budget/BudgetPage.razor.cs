using Estimator.Data.Jobs;
using Estimator.Engine.Edits;
using Estimator.Web.Catalogues;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Budget;

/// <summary>The homeowner's door: plain questions, one at a time, each answer stored in a job as it is given, to a budget with a range.</summary>
public sealed partial class BudgetPage
{
    private const int Questions = (int)BudgetStep.Prices;

    private string? _opened;
    private bool _missing;
    private int _read = -1;
    private string? _problem;
    private BudgetAnswers _first = new();
    private BudgetAnswers? _answers;

    /// <summary>Id of the job that holds the answers; none before the first.</summary>
    [Parameter]
    public string? JobId { get; set; }

    /// <summary>Which question stands open.</summary>
    [SupplyParameterFromQuery(Name = "q")]
    public int? Asked { get; set; }

    [Inject]
    private JobStore Store { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [Inject]
    private CatalogueShelf Catalogues { get; set; } = default!;

    [Inject]
    private JobNews News { get; set; } = default!;

    [Inject]
    private Explainer Explainer { get; set; } = default!;

    private bool Opened => JobId is not null && _opened == JobId && Desk.JobId == JobId;

    private BudgetAnswers Answers => Opened && _answers is { } answers ? answers : _first;

    private BudgetStep Step => JobId is null ? BudgetStep.Place : (BudgetStep)Math.Clamp(Asked ?? (int)BudgetStep.Done, (int)BudgetStep.Place, (int)BudgetStep.Done);

    private string NextWords => Step is BudgetStep.Prices ? "Show my budget" : "Next";

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        Catalogues.Changed += OnCatalogue;
        News.Edited += OnEdited;
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (JobId is not { } wanted || wanted == _opened)
        {
            return;
        }

        Explainer.Close();
        _missing = !await Desk.OpenAsync(wanted, Gone);
        (_opened, _read) = (wanted, -1);
        if (!_missing)
        {
            ReadAnswers();
        }
    }

    /// <inheritdoc/>
    protected override Task DeskChangedAsync()
    {
        if (Opened)
        {
            ReadAnswers();
        }

        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        Catalogues.Changed -= OnCatalogue;
        News.Edited -= OnEdited;
        base.Dispose(disposing);
    }

    private bool IsAnswered(BudgetStep step) => step < Step && step is not BudgetStep.Done;

    private string AnswerWords(BudgetStep step) => step is BudgetStep.Prices && Desk.Priced is { } priced
        ? $"{American.Number(Math.Min(LocalAsk.Given(priced), LocalAsk.Wanted(priced)))} of {American.Number(LocalAsk.Wanted(priced))} given"
        : BudgetWords.Answer(step, Answers);

    // Answers that make the job as it stands are kept as they were given; others are read back from it, such as after an undo.
    private void ReadAnswers()
    {
        if (_read != Desk.Version || _answers is null)
        {
            _read = Desk.Version;
            var same = _answers is { } answers && JobEditing.Between(Desk.Job, BudgetJob.Make(answers, Desk.Job), "same", "").Changes.IsEmpty;
            _answers = same ? _answers : BudgetJob.Read(Desk.Job);
        }
    }

    private async Task AnswerAsync(BudgetAnswers answers)
    {
        _problem = null;
        if (!Opened)
        {
            _first = answers;
            return;
        }

        _answers = answers;
        await Desk.EditAsync($"Budget: {BudgetWords.Question(Step)}", job => BudgetJob.Make(answers, job), Gone);
    }

    private async Task NextAsync()
    {
        if (!Opened)
        {
            var stored = await Store.CreateAsync(BudgetJob.Start(_first), JobDesk.Me, Gone);
            Navigation.NavigateTo(Address(stored.Job.Id, BudgetStep.Rooms));
        }
        else if (Step is BudgetStep.Rooms && Answers.Rooms.IsEmpty)
        {
            // An act does not draw its page anew by itself.
            _problem = "There is no room yet; choose at least one above.";
            StateHasChanged();
        }
        else
        {
            GoTo(Step + 1);
        }
    }

    private void GoTo(BudgetStep step)
    {
        _problem = null;
        Navigation.NavigateTo(Address(JobId!, step));
    }

    private static string Address(string jobId, BudgetStep step) => FormattableString.Invariant($"/budget/{Uri.EscapeDataString(jobId)}?q={(int)step}");

    private void OnCatalogue() => _ = InvokeAsync(() =>
    {
        if (Opened)
        {
            Desk.Reprice();
        }
    });

    private void OnEdited(string jobId, object by)
    {
        if (jobId == JobId && !ReferenceEquals(by, Desk))
        {
            _ = InvokeAsync(() => Desk.RefreshAsync());
        }
    }
}
