using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase;

/// <summary>The coils of one cable and how they are cut.</summary>
/// <param name="ItemId">The cable.</param>
/// <param name="Coils">The coils: those from the shelf first, then the longest.</param>
/// <param name="Cost">What they cost.</param>
/// <param name="LowerBound">No set of coils costs less than this.</param>
/// <param name="TooLong">Runs longer than any coil offered or on the shelf.</param>
public sealed record CutPlan(string ItemId, ImmutableArray<CutCoil> Coils, Money Cost, Money LowerBound, ImmutableArray<CutPiece> TooLong)
{
    /// <summary>From which length the end of a coil is worth keeping.</summary>
    public Length UsefulEnd { get; init; }

    /// <summary>Whether the plan is proven cheapest.</summary>
    public bool Proven => Cost == LowerBound;

    /// <summary>What could be saved at most.</summary>
    public Money Gap => Cost - LowerBound;

    /// <summary>Cable on the coils that are bought.</summary>
    public Length Bought => Sum(Coils.Where(c => c.Shelf is null).Select(c => c.Length));

    /// <summary>Cable on the coils that are taken from the shelf.</summary>
    public Length FromShelf => Sum(Coils.Where(c => c.Shelf is not null).Select(c => c.Length));

    /// <summary>Cable in the pieces.</summary>
    public Length InPieces => Sum(Coils.SelectMany(c => c.Pieces).Select(p => p.Length));

    /// <summary>Ends that are worth keeping.</summary>
    public Length Kept => Sum(Coils.Where(IsKept).Select(c => c.Left));

    /// <summary>Trims, and ends too short to keep.</summary>
    public Length Wasted => Bought + FromShelf - InPieces - Kept;

    /// <summary>Whether the end of a coil is worth keeping.</summary>
    public bool IsKept(CutCoil coil) => coil.Left > Length.Zero && coil.Left >= UsefulEnd;

    private static Length Sum(IEnumerable<Length> lengths) => lengths.Aggregate(Length.Zero, (sum, l) => sum + l);
}
