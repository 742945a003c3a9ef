using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase;

/// <summary>Searches every way of cutting pieces from a set of coils, longest piece first, up to a number of steps.</summary>
internal sealed class ExactPacking
{
    private const int MostSteps = 20_000;

    private readonly List<CutPiece> _pieces;
    private readonly List<Offer> _coils;
    private readonly long[] _left;
    private readonly int[] _coilOf;
    private readonly long[] _toCome;
    private int _steps;

    private ExactPacking(List<CutPiece> pieces, List<Offer> coils)
    {
        (_pieces, _coils) = (pieces, coils);
        _left = [.. coils.Select(c => Length.FromFeet(c.PackSize).ToNanometres())];
        _coilOf = new int[pieces.Count];
        _toCome = new long[pieces.Count + 1];
        for (var p = pieces.Count - 1; p >= 0; p--)
        {
            _toCome[p] = _toCome[p + 1] + pieces[p].Length.ToNanometres();
        }
    }

    /// <summary>The cutting; null where none was found.</summary>
    internal static ImmutableArray<CutCoil>? Find(List<CutPiece> pieces, int[] set, List<Offer> offers)
    {
        var search = new ExactPacking(pieces, [.. set.SelectMany((count, o) => Enumerable.Repeat(offers[o], count))]);
        return search.Place(0) ? search.Coils() : null;
    }

    private bool Place(int piece)
    {
        if (piece == _pieces.Count)
        {
            return true;
        }

        var length = _pieces[piece].Length.ToNanometres();
        if (++_steps > MostSteps || _left.Sum() < _toCome[piece])
        {
            return false;
        }

        var tried = new HashSet<long>();
        for (var c = 0; c < _left.Length; c++)
        {
            // Coils with the same length left are alike: one of them is enough.
            if (_left[c] < length || !tried.Add(_left[c]))
            {
                continue;
            }

            _left[c] -= length;
            _coilOf[piece] = c;
            if (Place(piece + 1))
            {
                return true;
            }

            _left[c] += length;
        }

        return false;
    }

    private ImmutableArray<CutCoil> Coils() =>
        [.. _coils.Select((offer, c) => new CutCoil(offer, [.. _pieces.Where((_, p) => _coilOf[p] == c)])).Where(c => !c.Pieces.IsEmpty)];
}
