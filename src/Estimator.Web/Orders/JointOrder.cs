using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Purchase;
using Estimator.Engine.Purchase.Suppliers;
using Estimator.Web.Catalogues;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;
using Estimator.Web.Purchase;
using Estimator.Web.Revisions;

namespace Estimator.Web.Orders;

/// <summary>What several jobs buy together: quantities of their saved revisions, at the prices in force today.</summary>
/// <param name="Papers">The revisions, in the order of the jobs.</param>
/// <param name="Plan">Packs, coils and cuts.</param>
/// <param name="Source">What explains its figures: the books of all jobs in one, their pages renumbered.</param>
public sealed record JointOrder(ImmutableArray<RevisionPaper> Papers, PurchasePlan Plan, FigureSource Source)
{
    /// <summary>Number of the page of the explanation book that names the jobs.</summary>
    public const int PageNumber = FigurePages.JobsOfAnOrder;

    /// <summary>How the coils of all jobs are cut.</summary>
    public ImmutableArray<CableCut> Cuts { get; } = CableCut.Of(Plan, [.. Papers.Select(p => p.Estimate)], Source);

    /// <summary>The ways to divide it among suppliers; null where no supplier's price is known, samples aside.</summary>
    public SupplyOptions? Supply { get; init; }

    /// <summary>The way that the plan follows; null where there is none to choose.</summary>
    public SupplyOption? Way { get; init; }

    /// <summary>Whether orders for these jobs were taken off, beside what is on the shelf.</summary>
    public bool OrdersTakenOff { get; init; }

    /// <summary>What must be settled before it is ordered: findings of the plan, breakers whose panel is not known, quotes that have ended.</summary>
    public ImmutableArray<string> ToSettle { get; init; } = [];

    /// <summary>The order of some revisions, nothing on the shelf and no supplier's terms known.</summary>
    public static JointOrder Of(IReadOnlyList<RevisionPaper> papers, PricedCatalogue catalogue) => Of(papers, catalogue, new OrderAsk([]), StockOnHand.Empty, [], DateOnly.MinValue);

    /// <summary>The order of some revisions.</summary>
    /// <param name="papers">The revisions.</param>
    /// <param name="catalogue">The catalogue in force.</param>
    /// <param name="ask">For which phase, and how it is divided.</param>
    /// <param name="had">What is on the shelf or was ordered.</param>
    /// <param name="terms">The terms of suppliers.</param>
    /// <param name="today">The day on which quotes must stand.</param>
    public static JointOrder Of(
        IReadOnlyList<RevisionPaper> papers, PricedCatalogue catalogue, OrderAsk ask, StockOnHand had, IReadOnlyCollection<SupplierTerms> terms, DateOnly today)
    {
        var stride = 1 + papers.SelectMany(p => p.Estimate.Book.Pages).Select(p => p.Number).DefaultIfEmpty(0).Max();
        var (page, pages) = (new PageWriter(PageNumber), new List<ExplanationPage>());
        var jobs = papers.Select((paper, i) =>
        {
            int Moved(int number) => number + (stride * (i + 1));
            pages.AddRange(paper.Estimate.Book.Pages.Select(p => p.Renumbered(Moved)));
            Fact There(Fact fact) => fact with { Node = fact.Node with { Page = Moved(fact.Node.Page) } };
            var takeoff = paper.Estimate.Takeoff;
            return (paper.Saved.Job.Id, takeoff with
            {
                Lines = [.. takeoff.Lines.Where(l => ask.Phase is null || BuyingPhase.Of(catalogue.Parts, l.ItemId) == ask.Phase).Select(l => l with { Quantity = Named(page, paper, There(l.Quantity)), Spare = l.Spare is { } spare ? There(spare) : null })],
                Pieces = [.. takeoff.Pieces.Select(p => p with { Length = There(p.Length), Trim = There(p.Trim) })],
                UsefulEnd = There(takeoff.UsefulEnd),
            });
        }).ToList();
        var panels = papers.SelectMany(p => p.Saved.Job.Panels.Select(x => (p.Saved.Job.Name, Panel: x))).ToList();
        var fitting = catalogue.Parts.WithOffers(o => BreakerFit.Fits(o, panels.Select(p => p.Panel)));
        var asked = fitting.WithOffers(o => !o.IsSample);
        var supply = asked.Items.Any(i => asked.OffersFor(i.Id).Any()) ? SupplyOptions.Of(SupplyPlans.Of(jobs, asked, had, terms), ask) : null;
        var way = supply?.Chosen(ask.Wish);
        var plan = Buying.Together(jobs, way is null ? fitting : supply!.Plans.Chosen(asked, way.Choice), had);
        var book = new ExplanationBook(pages.Append(page.ToPage()).Append(plan.Page).Concat(supply?.Pages ?? []));
        Job? Owner(int number) => number >= stride ? papers[(number / stride) - 1].Saved.Job : null;
        return new JointOrder([.. papers], plan, new FigureSource(book, null) { JobOfPage = Owner })
        {
            Supply = supply,
            Way = way,
            ToSettle = [.. plan.Findings.Select(f => f.Text).Concat(BreakerFit.ToSettle(plan, panels)).Concat(Expired(plan, today))],
        };
    }

    // One sentence a supplier and day, or a list of quotes that ended together would hide all else.
    private static IEnumerable<string> Expired(PurchasePlan plan, DateOnly today) => plan.Lines.SelectMany(l => l.Packs.Where(p => p.Offer.IsExpired(today)).Select(p => (l.Description, p.Offer)))
        .GroupBy(x => (x.Offer.Supplier, Last: x.Offer.ExpiresOn!.Value)).Select(ended =>
        {
            var items = ended.Select(x => x.Description).Distinct(StringComparer.Ordinal).ToList();
            return $"The {(items.Count == 1 ? "quote" : "quotes")} of {ended.Key.Supplier} for {(items.Count > 3 ? American.Count(items.Count, "item") : string.Join(", ", items))} ended on {American.Day(ended.Key.Last)}. The {(items.Count == 1 ? "price is" : "prices are")} used and may not hold: ask for new ones.";
        });

    // A quantity that says which job needs it.
    private static Fact Named(PageWriter page, RevisionPaper paper, Fact quantity) => page.Compute(
        Operation.Sum, "job-needs", $"{paper.Saved.Job.Name}, revision {American.Number(paper.Saved.Summary.Number)}", quantity.Unit, quantity);
}
