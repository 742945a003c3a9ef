using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase.Cutting;

namespace Estimator.Engine.Purchase;

/// <summary>What a cable can be cut from, as stocks of a <see cref="CuttingProblem"/> in sixteenths of an inch and parts of a dollar.</summary>
/// <remarks>
/// A piece counts with its trim, rounded up to the sixteenth, so that what is planned always fits. Coils on the shelf cost nothing and there is one of each. Cable by the foot is a
/// stock of each length that is wanted at its price to the sixteenth: less than whole feet cost, so that the bound stays true.
/// </remarks>
internal sealed class CableStocks
{
    // Unit prices go below the cent; coils that cost more than the solver counts in such parts are counted in cents.
    private const long FineParts = 10_000;
    private const long Cents = 100;
    private const decimal MostInFineParts = 100_000;

    private static readonly long Sixteenth = Length.FromSixteenths(1).ToNanometres();
    private static readonly int Foot = Length.FromFeet(1).ToSixteenths();

    private readonly List<Offer> _coils;
    private readonly Offer? _byTheFoot;
    private readonly List<OnShelf> _shelf;
    private readonly long _parts;

    internal CableStocks(IReadOnlyList<Offer> offers, IReadOnlyList<StockPiece> shelf)
    {
        _coils = [.. offers.Where(o => !CutCoil.SoldByTheFoot(o))];
        _byTheFoot = offers.Where(CutCoil.SoldByTheFoot).OrderBy(o => o.Price).ThenBy(o => o.Supplier, StringComparer.Ordinal).FirstOrDefault();
        _shelf = [.. shelf.Select(s => new OnShelf(s, s.Length.ToNanometres() / Sixteenth, [])).OrderBy(s => s.Left).ThenBy(s => s.Coil.Label, StringComparer.Ordinal)];
        _parts = offers.Any(o => o.Price.ToDollars() > MostInFineParts) ? Cents : FineParts;
    }

    /// <summary>A piece and its trim.</summary>
    internal static int Units(CutPiece piece) => checked((int)(((piece.Length + piece.Trim).ToNanometres() + Sixteenth - 1) / Sixteenth));

    /// <summary>Whether cable that is bought holds a piece.</summary>
    internal bool Holds(CutPiece piece) => _byTheFoot is not null || _coils.Any(o => Units(o) >= Units(piece));

    /// <summary>Puts a piece on the shortest coil of the shelf that holds it.</summary>
    internal bool PutOnShelf(CutPiece piece)
    {
        var found = _shelf.Where(s => s.Left >= Units(piece)).MinBy(s => s.Left);
        found?.Pieces.Add(piece);
        if (found is not null)
        {
            found.Left -= Units(piece);
        }

        return found is not null;
    }

    internal Money MoneyOf(long parts) => Money.FromDollars((decimal)parts / _parts);

    /// <summary>The problem: coils, then the shelf, then lengths by the foot.</summary>
    internal CuttingProblem Problem(IReadOnlyList<CutPiece> pieces) => new(
        [
            .. _coils.Select(o => new CuttingStock(Units(o), decimal.ToInt64(o.Price.ToDollars() * _parts))),
            .. _shelf.Select(s => new CuttingStock((int)Math.Max(1, s.Left), 0, s.Left > 0 ? 1 : 0)),
            .. _byTheFoot is { } foot ? pieces.Select(Units).Distinct().Select(u => new CuttingStock(u, decimal.ToInt64(decimal.Floor(foot.Price.ToDollars() * _parts * u / Foot)))) : [],
        ],
        [.. pieces.Select(p => new CuttingItem(Units(p), 1))]);

    /// <summary>The coils of a plan.</summary>
    internal List<CutCoil> Coils(CuttingPlan plan, IReadOnlyList<CutPiece> pieces)
    {
        List<CutCoil> coils = [.. plan.Patterns.Where(p => p.Stock < _coils.Count).Select(p => new CutCoil { Offer = _coils[p.Stock], Pieces = [.. p.Items.Select(i => pieces[i])] })];
        foreach (var pattern in plan.Patterns.Where(p => p.Stock >= _coils.Count && p.Stock < _coils.Count + _shelf.Count))
        {
            _shelf[pattern.Stock - _coils.Count].Pieces.AddRange(pattern.Items.Select(i => pieces[i]));
        }

        coils.AddRange(_shelf.Where(s => s.Pieces.Count > 0).Select(s => new CutCoil { Shelf = s.Coil, Pieces = [.. s.Pieces] }));
        List<CutPiece> cut = [.. plan.Patterns.Where(p => p.Stock >= _coils.Count + _shelf.Count).SelectMany(p => p.Items).Order().Select(i => pieces[i])];
        if (cut.Count > 0)
        {
            coils.Add(new CutCoil { Offer = _byTheFoot, Packs = (cut.Sum(Units) + Foot - 1) / Foot, Pieces = [.. cut] });
        }

        return coils;
    }

    private static int Units(Offer offer) => Length.FromFeet(offer.PackSize).ToSixteenths();

    private sealed class OnShelf(StockPiece coil, long left, List<CutPiece> pieces)
    {
        public StockPiece Coil { get; } = coil;

        public long Left { get; set; } = left;

        public List<CutPiece> Pieces { get; } = pieces;
    }
}
