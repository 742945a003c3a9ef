using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase;

/// <summary>A coil and the pieces cut from it, in order.</summary>
/// <param name="Offer">The coil.</param>
/// <param name="Pieces">The pieces, longest first.</param>
public sealed record CutCoil(Offer Offer, ImmutableArray<CutPiece> Pieces)
{
    /// <summary>What is left on the coil.</summary>
    public Length Left => Length.FromFeet(Offer.PackSize) - Pieces.Aggregate(Length.Zero, (sum, p) => sum + p.Length);
}
