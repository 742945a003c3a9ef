using System.Collections.Immutable;
using System.Globalization;
using Estimator.Data.Jobs;
using Estimator.Data.Revisions;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;
using Estimator.Web.Revisions;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Contracts;

/// <summary>Two saved revisions side by side.</summary>
public sealed partial class ComparePage
{
    private const string FromLabel = "From";
    private const string ToLabel = "To";

    private ImmutableArray<RevisionSummary> _revisions = [];
    private ImmutableArray<LoggedEdit> _edits = [];
    private RevisionComparison? _comparison;
    private bool _missing;

    /// <summary>The job.</summary>
    [Parameter]
    public string JobId { get; set; } = "";

    /// <summary>Number of the one revision.</summary>
    [SupplyParameterFromQuery]
    public int From { get; set; }

    /// <summary>Number of the other.</summary>
    [SupplyParameterFromQuery]
    public int To { get; set; }

    [Inject]
    private JobStore Jobs { get; set; } = default!;

    [Inject]
    private EstimateShelf Estimates { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    private (string Label, int Chosen)[] Sides => [(FromLabel, From), (ToLabel, To)];

    /// <summary>Address of a comparison.</summary>
    public static string Address(string jobId, int from, int to) => FormattableString.Invariant($"/jobs/{Uri.EscapeDataString(jobId)}/contract/compare?from={from}&to={to}");

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (_comparison is { } shown && shown.From.Saved.Summary.Number == From && shown.To.Saved.Summary.Number == To)
        {
            return;
        }

        (_comparison, _missing) = (null, false);
        _revisions = await Jobs.RevisionsAsync(JobId, Gone);
        var (from, to) = (await RevisionPaper.LoadAsync(Jobs, Estimates, JobId, From, Gone), await RevisionPaper.LoadAsync(Jobs, Estimates, JobId, To, Gone));
        _missing = from is null || to is null;
        if (from is not null && to is not null)
        {
            _comparison = new RevisionComparison(from, to);
            var (first, last) = (Math.Min(from.Saved.Summary.JobVersion, to.Saved.Summary.JobVersion), Math.Max(from.Saved.Summary.JobVersion, to.Saved.Summary.JobVersion));
            _edits = [.. Desk.Tail.Where(e => e.Sequence > first && e.Sequence <= last)];
        }
    }

    private static string Plain(decimal value, string unit, int digits) => unit == "$" ? American.Dollars(value) : $"{American.Number(value, digits)} {unit}".Trim();

    private static string Changed(decimal by, string unit, int digits) =>
        by == 0 ? "same" : unit == "$" ? $"{(by > 0 ? "+" : "")}{American.Dollars(by)}" : American.Change(by, digits);

    private void Go(string label, string? chosen)
    {
        if (int.TryParse(chosen, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
        {
            Navigation.NavigateTo(label == FromLabel ? Address(JobId, number, To) : Address(JobId, From, number));
        }
    }
}
