using System.Collections.Immutable;
using Estimator.Web.Revisions;

namespace Estimator.Web.Contracts;

/// <summary>What differs between two saved revisions of a job: figures and quantities.</summary>
/// <param name="From">The one.</param>
/// <param name="To">The other.</param>
public sealed record RevisionComparison(RevisionPaper From, RevisionPaper To)
{
    /// <summary>Head figures: what, unit, in the one, in the other, digits.</summary>
    public ImmutableArray<(string What, string Unit, decimal Before, decimal After, int Digits)> Figures =>
    [
        Of("Price", "$", p => p.Saved.Summary.Likely.ToDollars(), 2),
        Of("Direct cost", "$", p => p.Saved.Summary.DirectCost.ToDollars(), 2),
        Of("Material, as bought", "$", p => p.Estimate.Purchase.Total.Value, 2),
        Of("Hours", "h", p => p.Saved.Summary.Hours.ToHours(), 1),
        Of("Openings", "", p => p.Estimate.Takeoff.Openings.Value, 0),
        Of("Circuits", "", p => p.Estimate.Wiring.Circuits.Length, 0),
        Of("Cable runs", "", p => p.Estimate.Wiring.Runs.Length, 0),
    ];

    /// <summary>What differs in the takeoff.</summary>
    public ImmutableArray<TakeoffChange> Changes => Takeoff(From, To);

    /// <summary>What differs in the takeoff of two revisions, feet to the whole foot.</summary>
    public static ImmutableArray<TakeoffChange> Takeoff(RevisionPaper from, RevisionPaper to)
    {
        var lines = from.Estimate.Takeoff.Lines.Concat(to.Estimate.Takeoff.Lines).DistinctBy(l => l.ItemId);
        var (before, after) = (Sums(from), Sums(to));
        return [.. lines.Select(l => new TakeoffChange(l.ItemId, l.Description, l.Unit, before.GetValueOrDefault(l.ItemId), after.GetValueOrDefault(l.ItemId))).Where(c => c.By != 0)];
    }

    private static Dictionary<string, decimal> Sums(RevisionPaper paper) => paper.Estimate.Takeoff.Lines.GroupBy(l => l.ItemId, StringComparer.Ordinal)
        .ToDictionary(g => g.Key, g => decimal.Round(g.Sum(l => l.Quantity.Value), g.First().Unit == "foot" ? 0 : 2, MidpointRounding.AwayFromZero), StringComparer.Ordinal);

    private (string, string, decimal, decimal, int) Of(string what, string unit, Func<RevisionPaper, decimal> of, int digits) => (what, unit, of(From), of(To), digits);
}
