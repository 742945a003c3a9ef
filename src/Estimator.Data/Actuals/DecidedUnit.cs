using System.Collections.Immutable;
using Estimator.Engine.Learning;

namespace Estimator.Data.Actuals;

/// <summary>What was decided on a proposal.</summary>
/// <param name="Id">Its number in the company.</param>
/// <param name="Proposal">The proposal, with the jobs that it came from.</param>
/// <param name="Accepted">Whether it was accepted; else it was set aside.</param>
/// <param name="Who">Who decided.</param>
/// <param name="At">When.</param>
/// <param name="EndedBy">Who withdrew or replaced it; empty while it stands.</param>
/// <param name="EndedAt">When; null while it stands.</param>
public sealed record DecidedUnit(int Id, Proposal Proposal, bool Accepted, string Who, DateTimeOffset At, string EndedBy, DateTimeOffset? EndedAt)
{
    /// <summary>Whether later estimates take it.</summary>
    public bool InForce => Accepted && EndedAt is null;

    /// <summary>As the engine takes it.</summary>
    public OwnUnit ToUnit() => new(Proposal.Kind, Proposal.Key, Proposal.Pooled.Factor, Proposal.Jobs.Length);

    /// <summary>The factors in force.</summary>
    public static ImmutableArray<OwnUnit> Standing(IEnumerable<DecidedUnit> all) => [.. all.Where(d => d.InForce).Select(d => d.ToUnit()).OrderBy(u => u.Kind).ThenBy(u => u.Key, StringComparer.Ordinal)];
}
