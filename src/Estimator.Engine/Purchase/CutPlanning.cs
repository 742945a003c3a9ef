using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase.Cutting;

namespace Estimator.Engine.Purchase;

/// <summary>Chooses coils for the runs of a cable and cuts them: every run one continuous piece, at least cost.</summary>
/// <remarks>
/// States the cable as a <see cref="CuttingProblem"/> (<see cref="CableStocks"/>). A piece that only coils on the shelf can hold takes the shortest that does before the rest is
/// planned, longest piece first. Pieces that are bought by the foot are bought as one length.
/// </remarks>
public static class CutPlanning
{
    /// <summary>The plan for a cable.</summary>
    /// <param name="itemId">The cable.</param>
    /// <param name="pieces">The runs.</param>
    /// <param name="offers">Coils of one supplier or several, and cable by the foot.</param>
    /// <param name="shelf">Coils of it on the shelf.</param>
    /// <param name="steps">Steps of the search, which ends after the same work on every machine.</param>
    public static CutPlan For(string itemId, IEnumerable<CutPiece> pieces, IReadOnlyList<Offer> offers, IReadOnlyList<StockPiece> shelf, long steps)
    {
        var stocks = new CableStocks(offers, shelf);
        var (cut, tooLong) = (new List<CutPiece>(), ImmutableArray.CreateBuilder<CutPiece>());
        var forced = false;
        foreach (var piece in pieces.OrderByDescending(CableStocks.Units).ThenBy(p => p.Run, StringComparer.Ordinal))
        {
            if (stocks.Holds(piece))
            {
                cut.Add(piece);
            }
            else if (stocks.PutOnShelf(piece))
            {
                forced = true;
            }
            else
            {
                tooLong.Add(piece);
            }
        }

        var plan = CuttingSolver.Solve(stocks.Problem(cut), steps);
        var coils = stocks.Coils(plan, cut);
        var cost = coils.Aggregate(Money.Zero, (sum, c) => sum + c.Price);

        // Where a piece could go to the shelf only, other ways of using the shelf were not looked at: nothing is claimed then but that cable costs something.
        var bound = forced ? Money.Zero : plan.Proven && !coils.Any(c => c.IsByTheFoot) ? cost : stocks.MoneyOf(plan.LowerBound);
        return new CutPlan(
            itemId, [.. coils.OrderBy(c => c.Shelf is null).ThenByDescending(c => c.Length).ThenByDescending(c => c.Pieces[0].Length).ThenBy(c => c.Pieces[0].Run, StringComparer.Ordinal)],
            cost, bound, tooLong.ToImmutable());
    }
}
