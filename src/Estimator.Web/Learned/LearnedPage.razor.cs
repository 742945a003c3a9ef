using System.Collections.Immutable;
using Estimator.Data.Actuals;
using Estimator.Engine.Learning;
using Estimator.Web.Catalogues;
using Estimator.Web.Jobs;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Learned;

/// <summary>What closed jobs propose, and what was decided on it.</summary>
public sealed partial class LearnedPage
{
    private ImmutableArray<ClosedJob>? _closed;
    private ImmutableArray<DecidedUnit> _decisions = [];
    private ImmutableArray<Proposal> _open = [];

    [Inject]
    private ActualsStore Store { get; set; } = default!;

    [Inject]
    private OwnUnitStore Units { get; set; } = default!;

    [Inject]
    private LocalPriceShelf Shelf { get; set; } = default!;

    /// <inheritdoc/>
    protected override Task OnInitializedAsync() => LoadAsync();

    private async Task LoadAsync()
    {
        _decisions = await Units.ListAsync();
        var closed = await Store.ClosedAsync();
        var proposed = Proposals.Of(closed);
        _open = [.. proposed.Where(p => !IsDecided(p) && !IsAcceptedByClass(p, proposed))];
        _closed = closed;
    }

    // Decided on the same jobs: a further closed job proposes anew.
    private bool IsDecided(Proposal proposal) => _decisions.FirstOrDefault(d => d.Proposal.Kind == proposal.Kind && d.Proposal.Key == proposal.Key) is { } last
        && last.Proposal.Jobs.SequenceEqual(proposal.Jobs, StringComparer.Ordinal) && (!last.Accepted || last.InForce);

    // A phase whose classes all count is decided; accepted as a whole it would take their place.
    private bool IsAcceptedByClass(Proposal phase, ImmutableArray<Proposal> all) => all.Where(p => p.Kind == phase.Kind && UnitKey.IsWithin(p.Key, phase.Key)).ToList() is { Count: > 0 } classes
        && classes.All(c => IsDecided(c) && _decisions.Any(d => d.InForce && d.Proposal.Kind == c.Kind && d.Proposal.Key == c.Key));

    private async Task DecideAsync((ImmutableArray<Proposal> Proposals, bool Accepted) decision)
    {
        await Units.DecideAsync(decision.Proposals, decision.Accepted, JobDesk.Me);
        await AfterAsync();
    }

    private async Task WithdrawAsync(int id)
    {
        await Units.WithdrawAsync(id, JobDesk.Me);
        await AfterAsync();
    }

    private async Task AfterAsync()
    {
        await Shelf.RefreshAsync();
        await LoadAsync();
    }
}
