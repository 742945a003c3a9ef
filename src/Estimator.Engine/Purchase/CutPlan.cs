using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase;

/// <summary>The coils of one cable and how they are cut.</summary>
/// <param name="ItemId">The cable.</param>
/// <param name="Coils">The coils.</param>
/// <param name="Cost">What they cost.</param>
/// <param name="LowerBound">No set of coils costs less than this.</param>
/// <param name="TooLong">Runs longer than any coil offered.</param>
public sealed record CutPlan(string ItemId, ImmutableArray<CutCoil> Coils, Money Cost, Money LowerBound, ImmutableArray<CutPiece> TooLong)
{
    /// <summary>Whether the plan is proven cheapest.</summary>
    public bool Proven => Cost == LowerBound;
}
