using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Estimator.Documents.Purchase;
using Estimator.Engine;
using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;

namespace Estimator.Web.Purchase;

/// <summary>How the coils of one cable are cut, with a figure for all that is read off the drawing.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Description">The cable.</param>
/// <param name="Coils">The coils.</param>
/// <param name="Sums">What is bought, cut, kept and wasted.</param>
/// <param name="Source">What explains the figures.</param>
public sealed record CableCut(CutPlan Plan, string Description, ImmutableArray<CoilCut> Coils, CutSums Sums, FigureSource Source)
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = FigurePages.CableCut;

    private static readonly ConditionalWeakTable<PricedJob, object> Known = [];

    /// <summary>Feet of the longest coil: the drawing's scale.</summary>
    public int LongestFeet => (int)decimal.Ceiling(Coils.Select(c => c.Coil.Length.ToFeet()).DefaultIfEmpty(1).Max());

    /// <summary>The cables of a priced job, in takeoff order.</summary>
    public static ImmutableArray<CableCut> Of(PricedJob priced) => (ImmutableArray<CableCut>)Known.GetValue(priced, p => Of(p.Estimate.Purchase, [p.Estimate], p.Source));

    /// <summary>The cables of a plan for one job or several.</summary>
    public static ImmutableArray<CableCut> Of(PurchasePlan plan, IReadOnlyList<JobEstimate> jobs, FigureSource source)
    {
        var (page, runs) = (new PageWriter(PageNumber), CutRun.Of(jobs));
        var drawn = plan.Cuts.Where(c => c.Coils.Length > 0 || c.TooLong.Length > 0).Select(cut =>
        {
            var line = plan.Lines.First(l => l.ItemId == cut.ItemId);
            ImmutableArray<CoilCut> coils = [.. cut.Coils.Select((coil, i) => Coil(page, cut, coil, i + 1, runs))];
            return new CableCut(cut, line.Description, coils, CutSums.Of(page, cut, line, coils), source);
        }).ToList();
        var whole = source.With(page.ToPage());
        return [.. drawn.Select(d => d with { Source = whole })];
    }

    private static Fact Whole(PageWriter page, CutPlan plan, CutCoil coil)
    {
        if (coil.Offer is not { } offer)
        {
            return page.Row(Citation.Shelf, coil.Source, "On the shelf", coil.Length);
        }

        var pack = page.Row("offers.csv", $"{plan.ItemId}.{offer.Supplier}.{offer.PackSize}.pack_size", coil.IsByTheFoot ? "Sold by" : "Whole coil", Length.FromFeet(offer.PackSize));
        return coil.IsByTheFoot ? page.Compute(Operation.Product, "cut-to-length", "Cut to length", Unit.Length, pack, page.Constant("Feet", coil.Packs, Unit.Each)) : pack;
    }

    private static CoilCut Coil(PageWriter page, CutPlan plan, CutCoil coil, int number, Dictionary<string, CutRun> runs)
    {
        var whole = Whole(page, plan, coil);
        var (pieces, cut) = (ImmutableArray.CreateBuilder<PieceCut>(), new List<Fact> { whole });
        foreach (var piece in coil.Pieces)
        {
            var length = new Fact(piece.Length.ToNanometres(), Unit.Length, piece.LengthNode);
            var trim = new Fact(piece.Trim.ToNanometres(), Unit.Length, piece.TrimNode);
            var mark = page.Compute(Operation.Sum, "cut-mark", "Cut at", Unit.Length, [.. pieces.TakeLast(1).Select(p => p.Mark), trim, length]);
            pieces.Add(new PieceCut(length, mark, CutRun.For(runs, piece)));
            cut.AddRange([length, trim]);
        }

        var left = page.Compute(Operation.Difference, "coil-left", $"Left on coil {number}", Unit.Length, [.. cut]);
        return new CoilCut(number, coil, whole, pieces.ToImmutable(), left, plan.IsKept(coil));
    }
}
