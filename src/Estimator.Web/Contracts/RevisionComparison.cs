using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Web.Explanations;
using Estimator.Web.Revisions;

namespace Estimator.Web.Contracts;

/// <summary>What differs between two saved revisions of a job: figures and quantities.</summary>
/// <param name="From">The one.</param>
/// <param name="To">The other.</param>
public sealed record RevisionComparison(RevisionPaper From, RevisionPaper To)
{
    /// <summary>Head figures.</summary>
    public ImmutableArray<ComparedFigure> Figures =>
    [
        Of("Price", "$", p => p.Saved.Summary.Likely.ToDollars(), 2, p => p.Estimate.Bid.Price),
        Of("Direct cost", "$", p => p.Saved.Summary.DirectCost.ToDollars(), 2, p => p.Estimate.Bid.DirectTotal),
        Of("Material, as bought", "$", p => p.Estimate.Purchase.Total.Value, 2, p => p.Estimate.Purchase.Total),
        Of("Hours", "h", p => p.Saved.Summary.Hours.ToHours(), 1, p => p.Estimate.Labor.Total),
        Of("Openings", "", p => p.Estimate.Takeoff.Openings.Value, 0, p => p.Estimate.Takeoff.Openings),
        Of("Circuits", "", p => p.Estimate.Wiring.Circuits.Length, 0),
        Of("Cable runs", "", p => p.Estimate.Wiring.Runs.Length, 0),
    ];

    /// <summary>What explains the figures of the one.</summary>
    public FigureSource FromSource { get; } = new(From.Estimate.Book, From.Saved.Job);

    /// <summary>What explains those of the other.</summary>
    public FigureSource ToSource { get; } = new(To.Estimate.Book, To.Saved.Job);

    /// <summary>What differs in the takeoff.</summary>
    public ImmutableArray<TakeoffChange> Changes => Takeoff(From, To);

    /// <summary>What differs in the takeoff of two revisions, feet to the whole foot.</summary>
    public static ImmutableArray<TakeoffChange> Takeoff(RevisionPaper from, RevisionPaper to)
    {
        var lines = from.Estimate.Takeoff.Lines.Concat(to.Estimate.Takeoff.Lines).DistinctBy(l => l.ItemId);
        var (before, after) = (Sums(from), Sums(to));
        return [.. lines.Select(l => new TakeoffChange(l.ItemId, l.Description, l.Unit, before.GetValueOrDefault(l.ItemId), after.GetValueOrDefault(l.ItemId)) { ToldBefore = Line(from, l.ItemId), ToldAfter = Line(to, l.ItemId) }).Where(c => c.By != 0)];
    }

    private static Dictionary<string, decimal> Sums(RevisionPaper paper) => paper.Estimate.Takeoff.Lines.GroupBy(l => l.ItemId, StringComparer.Ordinal)
        .ToDictionary(g => g.Key, g => decimal.Round(g.Sum(l => l.Quantity.Value), g.First().Unit == "foot" ? 0 : 2, MidpointRounding.AwayFromZero), StringComparer.Ordinal);

    private ComparedFigure Of(string what, string unit, Func<RevisionPaper, decimal> of, int digits, Func<RevisionPaper, Fact>? told = null) =>
        new(what, unit, of(From), of(To), digits) { ToldBefore = Told(From, told), ToldAfter = Told(To, told) };

    private static Fact? Line(RevisionPaper paper, string item) =>
        paper.Estimate.Takeoff.Lines.Where(l => l.ItemId == item).Take(2).ToList() is [var line] ? line.Quantity : null;

    private static Fact? Told(RevisionPaper paper, Func<RevisionPaper, Fact>? told) => paper.Agrees ? told?.Invoke(paper) : null;
}
