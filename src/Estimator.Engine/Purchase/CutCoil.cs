using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase;

/// <summary>A coil and the pieces cut from it, in order.</summary>
/// <remarks>The free end is trimmed before each piece, so that every piece starts square.</remarks>
public sealed record CutCoil
{
    /// <summary>The offer that it is bought at; null for a coil from the shelf.</summary>
    public Offer? Offer { get; init; }

    /// <summary>The coil on the shelf; null for one that is bought.</summary>
    public StockPiece? Shelf { get; init; }

    /// <summary>The pieces, longest first.</summary>
    public required ImmutableArray<CutPiece> Pieces { get; init; }

    /// <summary>What was on it before the first cut.</summary>
    public Length Length => Shelf?.Length ?? Length.FromFeet(Offer!.PackSize);

    /// <summary>Where it comes from: the supplier, or what the firm calls the coil on its shelf.</summary>
    public string Source => Shelf?.Label ?? Offer!.Supplier;

    /// <summary>Cable lost at the cuts.</summary>
    public Length Trimmed => Pieces.Aggregate(Length.Zero, (sum, p) => sum + p.Trim);

    /// <summary>What is left on the coil.</summary>
    public Length Left => Length - Trimmed - Pieces.Aggregate(Length.Zero, (sum, p) => sum + p.Length);

    /// <summary>Where to cut: the end of each piece, measured from the free end of the whole coil, trims counted.</summary>
    public ImmutableArray<Length> Marks
    {
        get
        {
            var (marks, at) = (ImmutableArray.CreateBuilder<Length>(Pieces.Length), Length.Zero);
            foreach (var piece in Pieces)
            {
                at += piece.Trim + piece.Length;
                marks.Add(at);
            }

            return marks.MoveToImmutable();
        }
    }
}
