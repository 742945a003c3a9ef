using System.Collections.Immutable;

namespace Estimator.Engine.Learning;

/// <summary>A factor on a figure of the tables that closed jobs propose. Nothing follows from it before somebody accepts it.</summary>
/// <param name="Kind">Hours or material.</param>
/// <param name="Key">The phase or a class in it (<see cref="UnitKey"/>), or the category of the items.</param>
/// <param name="Pooled">The factor with its interval.</param>
/// <param name="Jobs">Ids of the jobs, in order.</param>
public sealed record Proposal(LearnedKind Kind, string Key, Pooled Pooled, ImmutableArray<string> Jobs)
{
    /// <summary>Whether the jobs tell a class apart from the rest of its phase; always for a whole phase and for material.</summary>
    public bool Apart { get; init; } = true;
}
