using System.Collections.Immutable;
using Estimator.Data.Jobs;
using Estimator.Data.Revisions;
using Estimator.Engine;
using Estimator.Engine.Alternates;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Wiring;
using Estimator.Web.Catalogues;

namespace Estimator.Web.Jobs;

/// <summary>The job that a browser tab works on: the job, its newest estimate, and the acts on it. Every act is in the store before it is shown as done.</summary>
/// <remarks>All members are called on the tab's own thread of control. The estimate comes later, and only the newest counts.</remarks>
public sealed class JobDesk(JobStore store, EstimateShelf estimates, CatalogueShelf catalogues, JobNews news, ILogger<JobDesk> log) : IDisposable
{
    /// <summary>Who edits, while there are no accounts.</summary>
    public const string Me = "You";

    private const int LongestTitle = 160;
    private const string FreezeId = "freeze-";

    private readonly SemaphoreSlim _turn = new(1, 1);
    private readonly UndoLine _undo = new();
    private Job? _job;
    private bool _working;
    private string _lastTitle = "";

    /// <summary>Raised after any change.</summary>
    public event Action? Changed;

    /// <summary>The job.</summary>
    /// <exception cref="InvalidOperationException">No job is open.</exception>
    public Job Job => _job ?? throw new InvalidOperationException("No job is open at this desk.");

    /// <summary>Id of the open job; null when none is.</summary>
    public string? JobId => _job?.Id;

    /// <summary>Version of <see cref="Job"/>.</summary>
    public int Version { get; private set; }

    /// <summary>Where the job stands.</summary>
    public JobState State { get; private set; }

    /// <summary>The log's end, oldest first.</summary>
    public ImmutableArray<LoggedEdit> Tail { get; private set; } = [];

    /// <summary>The newest estimate; it may be of an earlier version while <see cref="Working"/>. Null until the first is there.</summary>
    public PricedJob? Priced { get; private set; }

    /// <summary>Whether an estimate is being worked out.</summary>
    public bool Working => _working;

    /// <summary>Reference number of a fault while working out the estimate; null when there was none.</summary>
    public string? Fault { get; private set; }

    /// <summary>The last saved revision; null where none was saved.</summary>
    public RevisionSummary? LastRevision { get; private set; }

    /// <summary>Edits since the last saved revision, or since the start.</summary>
    public int EditsSinceRevision => Version - (LastRevision?.JobVersion ?? 0) - Tail.Count(e => e.Sequence > (LastRevision?.JobVersion ?? 0) && IsFreeze(e.Edit));

    /// <summary>Whether the price in sight is of no saved revision.</summary>
    public bool Provisional => LastRevision is null || EditsSinceRevision > 0;

    /// <summary>How far the search for the wiring goes: quick while edits are not in a revision, thorough for what a document shows.</summary>
    public SearchDepth Depth => Provisional ? SearchDepth.Quick : SearchDepth.Thorough;

    /// <summary>What the last edit of this tab did to the price.</summary>
    public PriceChange? LastChange { get; private set; }

    /// <summary>An edit that clashed with another's; null when none is open.</summary>
    public EditClash? Clash { get; private set; }

    /// <summary>Why the last edit was refused; empty when it was made.</summary>
    public ImmutableArray<JobProblem> Problems { get; private set; } = [];

    /// <summary>What undo would take back; null when there is nothing.</summary>
    public string? UndoTitle => _undo.Last?.Title;

    /// <summary>What redo would make again; null when there is nothing.</summary>
    public string? RedoTitle => _undo.Next?.Title;

    /// <summary>Opens a job.</summary>
    /// <returns>Whether there is such a job.</returns>
    public async Task<bool> OpenAsync(string jobId, CancellationToken token = default)
    {
        if (await store.LoadAsync(jobId, token) is not { } stored)
        {
            return false;
        }

        (Priced, LastChange, Clash, Fault, Problems, _lastTitle) = (null, null, null, null, [], "");
        LastRevision = (await store.RevisionsAsync(jobId, token)).OrderBy(r => r.Number).LastOrDefault();
        Take(stored);
        Recompute();
        return true;
    }

    /// <summary>Reads the job again after it was edited elsewhere.</summary>
    public async Task RefreshAsync(CancellationToken token = default)
    {
        if (JobId is not { } id || await store.LoadAsync(id, token) is not { } stored)
        {
            return;
        }

        LastRevision = (await store.RevisionsAsync(id, token)).OrderBy(r => r.Number).LastOrDefault();
        State = stored.State;
        if (stored.Version > Version)
        {
            Take(stored);
            Recompute();
        }

        Changed?.Invoke();
    }

    /// <summary>Prices the job again, after the catalogue changed.</summary>
    public void Reprice() => Recompute();

    /// <summary>Makes an edit: the difference between the job and what <paramref name="change"/> makes of it.</summary>
    /// <param name="title">What the user did, in plain words, such as "Bedroom 2: ceiling height 9' 0"".</param>
    /// <param name="change">Makes the new job from the one as it stands; it may be called again where another tab was faster.</param>
    /// <param name="token">Ends the wait.</param>
    /// <returns>Whether it was made; else <see cref="Problems"/> or <see cref="Clash"/> says why not.</returns>
    public Task<bool> EditAsync(string title, Func<Job, Job> change, CancellationToken token = default) =>
        AppendAsync(Shown(title), job => JobEditing.Between(job, change(job), Guid.NewGuid().ToString("N"), Shown(title)), change, token);

    /// <summary>States the wiring of an estimate of the job as it stands, so that what comes later is wired beside it. It changes no figure, and is not counted among the edits since a revision.</summary>
    /// <param name="title">What for, in plain words.</param>
    /// <param name="estimate">The estimate.</param>
    /// <returns>Whether it was made.</returns>
    public Task<bool> FreezeAsync(string title, JobEstimate estimate)
    {
        var (before, frozen) = (estimate.House.Job, FrozenAlternates.Pin(estimate));
        return AppendAsync(Shown(title), _ => JobEditing.Between(before, frozen, $"{FreezeId}{Guid.NewGuid():N}", Shown(title)), null, default);
    }

    /// <summary>The job as it stands, worked out thoroughly.</summary>
    public Task<PricedJob> ThoroughAsync() => estimates.For(Job, Version, catalogues.Current, SearchDepth.Thorough);

    /// <summary>Takes the last edit back.</summary>
    public Task<bool> UndoAsync() => _undo.Last is { } last ? AppendAsync($"Undo: {last.Title}", _ => UndoLine.Undo(last), null, default) : Task.FromResult(false);

    /// <summary>Makes the last edit that was taken back again.</summary>
    public Task<bool> RedoAsync() => _undo.Next is { } next ? AppendAsync($"Redo: {next.Title}", _ => UndoLine.Redo(next), null, default) : Task.FromResult(false);

    /// <summary>Leaves what the others made of it.</summary>
    public void KeepTheirs()
    {
        Clash = null;
        Changed?.Invoke();
    }

    /// <summary>Makes the edit that clashed on top of what the others made.</summary>
    public Task<bool> TakeMineAsync()
    {
        if (Clash is not { } clash)
        {
            return Task.FromResult(false);
        }

        Clash = null;
        return EditAsync(clash.Title, clash.Mine);
    }

    /// <summary>Forgets the sentences about a refused edit.</summary>
    public void DismissProblems()
    {
        Problems = [];
        Changed?.Invoke();
    }

    /// <summary>Saves a revision of the job as it stands, once its estimate is there.</summary>
    public async Task<RevisionSummary?> SaveRevisionAsync(string note, CancellationToken token = default)
    {
        var priced = await estimates.For(Job, Version, catalogues.Current, SearchDepth.Thorough);
        var saved = await store.SaveRevisionAsync(priced.Job.Id, new NewRevision(priced.Version, priced.Estimate, priced.Catalogue.Files, note, Me), token);
        LastRevision = saved ?? LastRevision;
        Recompute();
        news.Tell(priced.Job.Id, this);
        Changed?.Invoke();
        return saved;
    }

    /// <inheritdoc/>
    public void Dispose() => _turn.Dispose();

    // What was sold, or is in the wall, is not undone by a key.
    private void Remember(JobEdit edit)
    {
        if (IsFreeze(edit))
        {
            _undo.Clear();
        }
        else
        {
            _undo.Read(edit);
        }
    }

    private static bool IsFreeze(JobEdit edit) => edit.Id.StartsWith(FreezeId, StringComparison.Ordinal);

    // A title may hold what a user typed, and stands in one line of the history.
    private static string Shown(string title) => title.Length <= LongestTitle
        ? title
        : $"{new string([.. title[..LongestTitle].Reverse().SkipWhile(char.IsSurrogate).Reverse()])}…";

    private async Task<bool> AppendAsync(string title, Func<Job, JobEdit> make, Func<Job, Job>? again, CancellationToken token)
    {
        await _turn.WaitAsync(token);
        try
        {
            var edit = make(Job);
            if (edit.Changes.IsEmpty)
            {
                return true;
            }

            var done = await store.AppendAsync(Job.Id, Version, edit, Me, token) switch
            {
                Appended appended => Take(appended, edit),
                AppendRefused refused => Refuse(refused),
                AppendConflict conflict => Contest(conflict, title, again),
                JobGone gone => throw new InvalidOperationException($"The job {gone.JobId} was deleted elsewhere."),
                var other => throw new InvalidOperationException($"The store answered {other.GetType().Name}."),
            };
            Recompute();
            return done;
        }
        finally
        {
            _turn.Release();
            Changed?.Invoke();
        }
    }

    private bool Take(Appended appended, JobEdit edit)
    {
        (_job, Version, Problems, _lastTitle) = (appended.Job, appended.Version, [], edit.Title);
        var now = appended.Theirs.Append(new LoggedEdit(appended.Version, edit, Me, TimeProvider.System.GetUtcNow()));
        foreach (var logged in now)
        {
            Remember(logged.Edit);
        }

        Tail = [.. Tail.Concat(now).TakeLast(StoredJob.LongestTail)];
        news.Tell(appended.Job.Id, this);
        return true;
    }

    private bool Refuse(AppendRefused refused)
    {
        Take(refused.Current);
        Problems = refused.Problems;
        return false;
    }

    private bool Contest(AppendConflict conflict, string title, Func<Job, Job>? again)
    {
        Take(conflict.Current);
        Clash = new EditClash(title, conflict.Conflicts, conflict.Theirs, again ?? (job => job));
        return false;
    }

    private void Take(StoredJob stored)
    {
        (_job, Version, State, Tail) = (stored.Job, stored.Version, stored.State, stored.Tail);
        _undo.Clear();
        foreach (var logged in stored.Tail)
        {
            Remember(logged.Edit);
        }
    }

    private void Recompute()
    {
        if (!_working)
        {
            _working = true;
            _ = WorkAsync();
        }
    }

    // Edits that come while an estimate is made are priced together in the next one: the newest job counts.
    private async Task WorkAsync()
    {
        while (_job is { } job && !IsPriced(job))
        {
            var work = estimates.For(job, Version, catalogues.Current, Depth);
            await Task.WhenAny(work);
            if (work.IsFaulted)
            {
                Fault = Guid.NewGuid().ToString("N")[..8];
                log.LogError(work.Exception, "Estimate of job {Job} failed, reference {Reference}.", job.Id, Fault);
                break;
            }

            if (job.Id == JobId)
            {
                Show(await work);
            }
        }

        _working = false;
        Changed?.Invoke();
    }

    // By content: a catalogue that was put back as it was finds the estimate that was made with it, and another instance would never do.
    private bool IsPriced(Job job) =>
        Priced is { } priced && priced.Version == Version && priced.Job.Id == job.Id && priced.Catalogue.Parts.Hash == catalogues.Current.Parts.Hash && priced.Estimate.Depth == Depth;

    private void Show(PricedJob priced)
    {
        Fault = null;
        if (Priced is { } before && _lastTitle.Length > 0 && priced.Version == Version)
        {
            LastChange = new PriceChange(before.Estimate.Bid.Price.Value, priced.Estimate.Bid.Price.Value, _lastTitle);
        }

        Priced = priced;
        Changed?.Invoke();
    }
}
