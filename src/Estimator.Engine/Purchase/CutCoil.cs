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

    /// <summary>Packs of the offer: 1, or feet of cable that is sold by the foot and cut to length.</summary>
    public int Packs { get; init; } = 1;

    /// <summary>The pieces, longest first.</summary>
    public required ImmutableArray<CutPiece> Pieces { get; init; }

    /// <summary>What was on it before the first cut.</summary>
    public Length Length => Shelf?.Length ?? Length.FromFeet(Offer!.PackSize * Packs);

    /// <summary>What it costs.</summary>
    public Money Price => Offer is null ? Money.Zero : Offer.Price * Packs;

    /// <summary>Whether it is a length bought by the foot.</summary>
    public bool IsByTheFoot => Offer is { } offer && SoldByTheFoot(offer);

    /// <summary>Where it comes from: the supplier, or what the firm calls the coil on its shelf.</summary>
    public string Source => Shelf?.Label ?? Offer!.Supplier;

    /// <summary>Whether an offer of cable is by the foot: a coil of one foot would hold no run.</summary>
    public static bool SoldByTheFoot(Offer offer) => offer.PackSize == 1;

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
