using System.Collections.Immutable;
using Estimator.Data.Companies;
using Estimator.Data.Jobs;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Learning;
using Estimator.Web.Catalogues;
using Estimator.Web.Figures;
using Estimator.Web.Frame;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace Estimator.Web.Jobs;

/// <summary>All jobs: search, start, import.</summary>
public sealed partial class JobsPage
{
    private const int LargestFile = 8 * 1024 * 1024;

    private static readonly ImmutableArray<(string Title, JobState? State, bool Archived)> Choices =
    [
        ("All", null, false), ("Estimating", JobState.Draft, false), ("Bid sent", JobState.Sent, false), ("Won", JobState.Won, false),
        ("Lost", JobState.Lost, false), ("Finished", JobState.Finished, false), ("Archive", null, true),
    ];

    private JobFilter _filter = JobFilter.All;
    private ImmutableArray<JobSummary>? _jobs;
    private ImmutableArray<string> _refused = [];
    private string _refusedFile = "";

    [Inject]
    private JobStore Store { get; set; } = default!;

    [Inject]
    private CompanyStore Company { get; set; } = default!;

    [Inject]
    private LocalPriceShelf Shelf { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    private string Summary => _jobs is { } jobs ? $"{American.Count(jobs.Length, "job")} {(_filter.Archived ? "in the archive" : "here")}." : "";

    /// <inheritdoc/>
    protected override Task OnInitializedAsync() => LoadAsync();

    private async Task LoadAsync() => _jobs = await Store.ListAsync(_filter);

    private Task SearchAsync(string? text)
    {
        _filter = _filter with { Text = text ?? "" };
        return LoadAsync();
    }

    private Task ChooseAsync((string Title, JobState? State, bool Archived) choice)
    {
        _filter = _filter with { State = choice.State, Archived = choice.Archived };
        return LoadAsync();
    }

    private bool IsChosen((string Title, JobState? State, bool Archived) choice) => _filter.State == choice.State && _filter.Archived == choice.Archived;

    private async Task StartBlankAsync()
    {
        var company = await Company.LoadAsync();
        var stated = company.Payment with { Milestones = [] } != new PaymentTerms();
        await StartAsync(StartedAsFirm(JobStarts.Blank("New job") with { Bid = company.Rates, Payment = stated ? company.Payment : null }), "rooms");
    }

    private Job StartedAsFirm(Job job) => job with { Practice = OwnUnits.Over(job.Practice, Shelf.Units) };

    private async Task StartAsync(Job job, string stage = "overview")
    {
        var stored = await Store.CreateAsync(job, JobDesk.Me);
        Navigation.NavigateTo(Stages.Address(stored.Job.Id, stage));
    }

    private async Task ImportAsync(InputFileChangeEventArgs e)
    {
        (_refused, _refusedFile) = ([], e.File.Name);
        if (e.File.Size > LargestFile)
        {
            _refused = [$"The file has {American.Number(e.File.Size)} bytes; up to {American.Number(LargestFile)} are accepted."];
            return;
        }

        using var reader = new StreamReader(e.File.OpenReadStream(LargestFile));
        var reading = JobFile.Read(await reader.ReadToEndAsync(), e.File.Name);
        if (reading.Ok)
        {
            await StartAsync(reading.Job);
        }
        else
        {
            _refused = [.. reading.Problems.Select(p => p.ToString())];
        }
    }
}
