using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Purchase;
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

    /// <summary>The order of some revisions.</summary>
    public static JointOrder Of(IReadOnlyList<RevisionPaper> papers, PricedCatalogue catalogue)
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
                Lines = [.. takeoff.Lines.Select(l => l with { Quantity = Named(page, paper, There(l.Quantity)) })],
                Pieces = [.. takeoff.Pieces.Select(p => p with { Length = There(p.Length), Trim = There(p.Trim) })],
                UsefulEnd = There(takeoff.UsefulEnd),
            });
        }).ToList();
        var plan = Buying.Together(jobs, catalogue.Parts);
        var book = new ExplanationBook(pages.Append(page.ToPage()).Append(plan.Page));
        Job? Owner(int number) => number >= stride ? papers[(number / stride) - 1].Saved.Job : null;
        return new JointOrder([.. papers], plan, new FigureSource(book, null) { JobOfPage = Owner });
    }

    // A quantity that says which job needs it.
    private static Fact Named(PageWriter page, RevisionPaper paper, Fact quantity) => page.Compute(
        Operation.Sum, "job-needs", $"{paper.Saved.Job.Name}, revision {American.Number(paper.Saved.Summary.Number)}", quantity.Unit, quantity);
}
