using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Estimator.Documents.Purchase;
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
/// <param name="Left">What stays on all coils together.</param>
/// <param name="Source">What explains the figures.</param>
public sealed record CableCut(CutPlan Plan, string Description, ImmutableArray<CoilCut> Coils, Fact Left, FigureSource Source)
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = FigurePages.CableCut;

    private static readonly ConditionalWeakTable<PricedJob, object> Known = [];

    /// <summary>Feet of the longest coil: the drawing's scale.</summary>
    public int LongestFeet => Coils.Select(c => c.Coil.Offer.PackSize).DefaultIfEmpty(1).Max();

    /// <summary>The cables of a priced job, in takeoff order.</summary>
    public static ImmutableArray<CableCut> Of(PricedJob priced) => (ImmutableArray<CableCut>)Known.GetValue(priced, p => Draw(p));

    private static ImmutableArray<CableCut> Draw(PricedJob priced)
    {
        var (estimate, page) = (priced.Estimate, new PageWriter(PageNumber));
        var runs = CutRun.Of([estimate]);
        var lengths = estimate.Wiring.Runs.Select(r => (r.Id, r.Total)).Concat(estimate.Wiring.Feeders.Select(f => (f.Id, f.Total))).GroupBy(r => $"{estimate.House.Job.Id}: {r.Id}", StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First().Total, StringComparer.Ordinal);
        var drawn = estimate.Purchase.Cuts.Where(c => c.Coils.Length > 0 || c.TooLong.Length > 0).Select(plan =>
        {
            ImmutableArray<CoilCut> coils = [.. plan.Coils.Select((coil, i) => Coil(page, plan, coil, i + 1, runs, lengths))];
            return (Plan: plan, Coils: coils, Left: page.Sum("coils-left", "Left on all coils", Unit.Length, [.. coils.Select(c => c.Left)]));
        }).ToList();
        var source = priced.Source.With(page.ToPage());
        return [.. drawn.Select(d => new CableCut(d.Plan, estimate.Purchase.Lines.First(l => l.ItemId == d.Plan.ItemId).Description, d.Coils, d.Left, source))];
    }

    private static CoilCut Coil(PageWriter page, CutPlan plan, CutCoil coil, int number, Dictionary<string, CutRun> runs, Dictionary<string, Fact> lengths)
    {
        var offer = coil.Offer;
        var whole = page.Row("offers.csv", $"{plan.ItemId}.{offer.Supplier}.{offer.PackSize}.pack_size", "Whole coil", Length.FromFeet(offer.PackSize));
        ImmutableArray<(Fact Length, CutRun Run)> pieces = [.. coil.Pieces.Select(p => (lengths[p.Run], CutRun.For(runs, p)))];
        var left = page.Compute(Operation.Difference, "coil-left", $"Left on coil {number}", Unit.Length, [whole, .. pieces.Select(p => p.Length)]);
        return new CoilCut(number, coil, pieces, left);
    }
}
