using System.Collections.Immutable;

namespace Estimator.Engine.Purchase.Cutting;

/// <summary>A plan for a <see cref="CuttingProblem"/>.</summary>
/// <param name="Patterns">The stocks that are cut.</param>
/// <param name="Price">What they cost.</param>
/// <param name="LowerBound">No plan costs less than this; worked out in whole numbers.</param>
public sealed record CuttingPlan(ImmutableArray<CuttingPattern> Patterns, long Price, long LowerBound)
{
    /// <summary>Whether no plan costs less.</summary>
    public bool Proven => Price == LowerBound;
}
