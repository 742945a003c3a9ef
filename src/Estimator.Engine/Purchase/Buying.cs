using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.Measures;
using Estimator.Engine.Takeoff;
using Estimator.Engine.Wiring;

namespace Estimator.Engine.Purchase;

/// <summary>Turns the takeoffs of one job or several into packs, coils and a cut plan.</summary>
public sealed class Buying
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = 5;

    private readonly PartsCatalogue _catalogue;
    private readonly SearchDepth _depth;
    private readonly PageWriter _page = new(PageNumber);
    private readonly List<Finding> _findings = [];
    private readonly List<CutPlan> _cuts = [];

    private readonly StockOnHand _stock;

    private Buying(PartsCatalogue catalogue, StockOnHand stock, SearchDepth depth) => (_catalogue, _stock, _depth) = (catalogue, stock, depth);

    /// <summary>The purchase of one job.</summary>
    /// <param name="job">Id of the job.</param>
    /// <param name="takeoff">What it needs.</param>
    /// <param name="catalogue">What is offered.</param>
    /// <param name="stock">What is on the shelf; it is used first.</param>
    /// <param name="depth">How far cut plans are searched.</param>
    public static PurchasePlan For(string job, TakeoffResult takeoff, PartsCatalogue catalogue, StockOnHand? stock = null, SearchDepth depth = SearchDepth.Thorough) =>
        Together([(job, takeoff)], catalogue, stock, depth);

    /// <summary>One purchase for several jobs.</summary>
    /// <param name="jobs">Id of each job and what it needs.</param>
    /// <param name="catalogue">What is offered.</param>
    /// <param name="stock">What is on the shelf; it is used first.</param>
    /// <param name="depth">How far cut plans are searched.</param>
    public static PurchasePlan Together(
        IReadOnlyList<(string Job, TakeoffResult Takeoff)> jobs, PartsCatalogue catalogue, StockOnHand? stock = null, SearchDepth depth = SearchDepth.Thorough) =>
        new Buying(catalogue, stock ?? StockOnHand.Empty, depth).Compute(jobs);

    private PurchasePlan Compute(IReadOnlyList<(string Job, TakeoffResult Takeoff)> jobs)
    {
        var order = _catalogue.Items.Select((item, i) => (item.Id, i)).ToDictionary(x => x.Id, x => x.i, StringComparer.Ordinal);
        var needed = jobs.SelectMany(j => j.Takeoff.Lines).Where(l => !l.OwnerSupplied && (_catalogue.Find(l.ItemId)?.IsBought ?? true))
            .GroupBy(l => l.ItemId, StringComparer.Ordinal).OrderBy(g => order.GetValueOrDefault(g.Key, int.MaxValue)).ThenBy(g => g.Key, StringComparer.Ordinal);
        ImmutableArray<PurchaseLine> lines = [.. needed.Select(g => Line(g, jobs))];
        return new PurchasePlan
        {
            Lines = lines,
            Cuts = [.. _cuts],
            Total = _page.Compute(Operation.Sum, "purchase-total", "Material", Unit.Dollars, [.. lines.Where(l => l.Cost is not null).Select(l => new Fact(l.Cost!.Value.Value.ToDollars(), Unit.Dollars, l.Cost.Value.Node))]),
            Findings = [.. _findings],
            Page = _page.ToPage(),
        };
    }

    private PurchaseLine Line(IGrouping<string, TakeoffLine> lines, IReadOnlyList<(string Job, TakeoffResult Takeoff)> jobs)
    {
        var first = lines.First();
        var need = _page.Sum("purchase-need", first.Description, first.Quantity.Unit, [.. lines.Select(l => l.Quantity), .. lines.Where(l => l.Spare is not null).Select(l => l.Spare!.Value)]);
        var offers = _catalogue.OffersFor(first.ItemId).ToList();
        var shelf = _stock.Pieces.Where(p => p.ItemId == first.ItemId).ToList();
        if (offers.Count == 0 && shelf.Count == 0 && _stock.CountOf(first.ItemId) < need.Value)
        {
            _findings.Add(NoPrice(first, need));
            return new PurchaseLine(first.ItemId, first.Description, first.Unit, need, [], 0, null);
        }

        return first.Category == "cable" ? Cable(first, need, offers, shelf, jobs) : Packs(first, need, offers);
    }

    private PurchaseLine Packs(TakeoffLine line, Fact need, List<Offer> offers)
    {
        var used = Math.Min(need.Value, _stock.CountOf(line.ItemId));
        var whole = (int)decimal.Ceiling(need.Value - used);
        var packs = PackChoice.Cheapest(whole, offers);
        return new PurchaseLine(line.ItemId, line.Description, line.Unit, need, packs, used + packs.Sum(p => p.Count * p.Offer.PackSize) - need.Value, Cost(line, need, packs)) { FromStock = used };
    }

    private PurchaseLine Cable(TakeoffLine line, Fact need, List<Offer> offers, List<StockPiece> shelf, IReadOnlyList<(string Job, TakeoffResult Takeoff)> jobs)
    {
        var pieces = jobs.SelectMany(j => j.Takeoff.Pieces.Where(p => p.ItemId == line.ItemId).Select(p => new CutPiece($"{j.Job}: {p.Run}", p.Length.AsLength().Value, p.Trim.AsLength().Value)
        {
            LengthNode = p.Length.Node,
            TrimNode = p.Trim.Node,
        }));
        var cut = CutPlanning.For(line.ItemId, pieces, offers, shelf, CuttingSteps.For(_depth)) with { UsefulEnd = jobs.Max(j => j.Takeoff.UsefulEnd.AsLength().Value) };
        _cuts.Add(cut);
        if (!cut.TooLong.IsEmpty)
        {
            _findings.Add(TooLong(line, cut));
        }

        ImmutableArray<PackCount> packs = [.. cut.Coils.Where(c => c.Offer is not null).GroupBy(c => c.Offer!).OrderBy(g => g.Key.PackSize).Select(g => new PackCount(g.Key, g.Sum(c => c.Packs)))];
        return new PurchaseLine(line.ItemId, line.Description, line.Unit, need, packs, cut.Coils.Sum(c => c.Left.ToFeet()), Cost(line, need, packs))
        {
            FromStock = cut.Coils.Where(c => c.Shelf is not null).Sum(c => (c.Length - c.Left).ToFeet()),
        };
    }

    private Explained<Money> Cost(TakeoffLine line, Fact need, ImmutableArray<PackCount> packs)
    {
        List<Fact> costs = [];
        foreach (var pack in packs)
        {
            var price = _page.Row(
                "offers.csv", $"{line.ItemId}.{pack.Offer.Supplier}.{pack.Offer.PackSize}", $"Price of {pack.Offer.PackSize} from {pack.Offer.Supplier}: {pack.Offer.Note}",
                pack.Offer.Price.ToDollars(), Unit.Dollars);
            costs.Add(_page.Compute(
                Operation.Product, "purchase-packs", $"Packs of {pack.Offer.PackSize}", Unit.Dollars, price, _page.Constant("Packs", pack.Count, Unit.Each)));
        }

        var sum = _page.Sum("purchase-cost", line.Description, Unit.Dollars, costs);
        return Cents.Round(_page, _page.Compute(Operation.Because, "purchase-cost", line.Description, Unit.Dollars, sum, need)).AsMoney();
    }

    private static Finding NoPrice(TakeoffLine line, Fact need) => new()
    {
        Code = "no-price",
        Severity = Severity.Advice,
        Where = [line.ItemId],
        Text = FormattableString.Invariant($"Nobody offers {line.Description}: {need.Value:0.##} are needed and cost nothing in the bid yet. Add a price."),
        Figures = [need.Node],
    };

    private static Finding TooLong(TakeoffLine line, CutPlan cut) => new()
    {
        Code = "run-longer-than-coil",
        Severity = Severity.Advice,
        Where = [.. cut.TooLong.Select(p => p.Run)],
        Text = FormattableString.Invariant($"{line.Description}: {cut.TooLong.Length} run(s) are longer, with tolerance and trim, than the longest coil offered; the longest piece is {cut.TooLong[0].Length}. They cost nothing in the bid yet: add a longer coil."),
    };
}
