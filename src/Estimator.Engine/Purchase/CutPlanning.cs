using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase.Cutting;

namespace Estimator.Engine.Purchase;

/// <summary>Chooses coils for the runs of a cable and cuts them: every run one continuous piece, at least cost.</summary>
/// <remarks>
/// States the cable as a <see cref="CuttingProblem"/> in sixteenths of an inch and ten-thousandths of a dollar; a piece counts with its trim. Coils on the shelf cost nothing and
/// there is one of each. A piece that only coils on the shelf can hold takes the shortest that does before the rest is planned, longest piece first.
/// </remarks>
public static class CutPlanning
{
    // Unit prices go below the cent; a coil that costs more than the solver counts in such parts is counted in cents.
    private const long FineParts = 10_000;
    private const long Cents = 100;
    private const decimal MostInFineParts = 100_000;

    private static readonly long Sixteenth = Length.FromSixteenths(1).ToNanometres();

    /// <summary>The plan for a cable.</summary>
    /// <param name="itemId">The cable.</param>
    /// <param name="pieces">The runs.</param>
    /// <param name="offers">Coils of one supplier or several.</param>
    /// <param name="shelf">Coils of it on the shelf.</param>
    /// <param name="steps">Steps of the search, which ends after the same work on every machine.</param>
    public static CutPlan For(string itemId, IEnumerable<CutPiece> pieces, IReadOnlyList<Offer> offers, IReadOnlyList<StockPiece> shelf, long steps)
    {
        var longest = offers.Select(Units).DefaultIfEmpty(0).Max();
        var open = shelf.Select(s => new Open(s, s.Length.ToNanometres() / Sixteenth, [])).OrderBy(s => s.Left).ThenBy(s => s.Shelf.Label, StringComparer.Ordinal).ToList();
        var (cut, tooLong) = (new List<CutPiece>(), ImmutableArray.CreateBuilder<CutPiece>());
        var forced = false;
        foreach (var piece in pieces.OrderByDescending(Units).ThenBy(p => p.Run, StringComparer.Ordinal))
        {
            if (Units(piece) <= longest)
            {
                cut.Add(piece);
            }
            else if (open.Where(s => s.Left >= Units(piece)).MinBy(s => s.Left) is { } only)
            {
                only.Pieces.Add(piece);
                only.Left -= Units(piece);
                forced = true;
            }
            else
            {
                tooLong.Add(piece);
            }
        }

        var parts = offers.Any(o => o.Price.ToDollars() > MostInFineParts) ? Cents : FineParts;
        var plan = CuttingSolver.Solve(Problem(cut, offers, open, parts), steps);
        List<CutCoil> coils = [.. plan.Patterns.Where(p => p.Stock < offers.Count).Select(p => new CutCoil { Offer = offers[p.Stock], Pieces = [.. p.Items.Select(i => cut[i])] })];
        foreach (var pattern in plan.Patterns.Where(p => p.Stock >= offers.Count))
        {
            open[pattern.Stock - offers.Count].Pieces.AddRange(pattern.Items.Select(i => cut[i]));
        }

        coils.AddRange(open.Where(s => s.Pieces.Count > 0).Select(s => new CutCoil { Shelf = s.Shelf, Pieces = [.. s.Pieces] }));
        var cost = coils.Aggregate(Money.Zero, (sum, c) => c.Offer is null ? sum : sum + c.Offer.Price);

        // Where a piece could go to the shelf only, other ways of using the shelf were not looked at: nothing is claimed then but that cable costs something.
        var bound = forced ? Money.Zero : plan.Proven ? cost : Money.FromDollars((decimal)plan.LowerBound / parts);
        return new CutPlan(
            itemId, [.. coils.OrderBy(c => c.Shelf is null).ThenByDescending(c => c.Length).ThenByDescending(c => c.Pieces[0].Length).ThenBy(c => c.Pieces[0].Run, StringComparer.Ordinal)],
            cost, bound, tooLong.ToImmutable());
    }

    private static CuttingProblem Problem(List<CutPiece> pieces, IReadOnlyList<Offer> offers, List<Open> shelf, long parts) => new(
        [
            .. offers.Select(o => new CuttingStock(Units(o), decimal.ToInt64(o.Price.ToDollars() * parts))),
            .. shelf.Select(s => new CuttingStock((int)Math.Max(1, s.Left), 0, s.Left > 0 ? 1 : 0)),
        ],
        [.. pieces.Select(p => new CuttingItem(Units(p), 1))]);

    private static int Units(Offer offer) => Length.FromFeet(offer.PackSize).ToSixteenths();

    // Rounded up, so that what is planned always fits.
    private static int Units(CutPiece piece) => checked((int)(((piece.Length + piece.Trim).ToNanometres() + Sixteenth - 1) / Sixteenth));

    private sealed class Open(StockPiece shelf, long left, List<CutPiece> pieces)
    {
        public StockPiece Shelf { get; } = shelf;

        public long Left { get; set; } = left;

        public List<CutPiece> Pieces { get; } = pieces;
    }
}
