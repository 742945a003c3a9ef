using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.Measures;
using Estimator.Engine.Upgrades;

namespace Estimator.Engine.Alternates;

/// <summary>Prices alternates by working the changed job out whole, each beside the job as it stands.</summary>
/// <remarks>Pins of the job hold in both, so in a job that is sold an alternate is wired beside what is frozen, as an edit is.</remarks>
public static class AlternatePricing
{
    /// <summary>Number of the page of explanations.</summary>
    public const int PageNumber = -50;

    /// <summary>The price of alternates taken together, at the depth of the estimate.</summary>
    /// <param name="before">The job as it stands.</param>
    /// <param name="ids">Ids of alternates of the job.</param>
    /// <param name="catalogue">The catalogue.</param>
    /// <returns>The price, or in plain words why there is none.</returns>
    public static Parsed<PricedAlternate> For(JobEstimate before, IReadOnlyCollection<string> ids, PartsCatalogue catalogue)
    {
        var changed = AlternateChanges.Applied(before.House.Job, ids);
        return changed.Ok
            ? Parsed<PricedAlternate>.Success(Between(before, JobEstimate.Compute(changed.Job, catalogue, before.Depth), ids))
            : Parsed<PricedAlternate>.Failure(string.Join(" ", changed.Problems.Select(p => p.ToString())));
    }

    /// <summary>What lies between two estimates of which one has something that the other lacks.</summary>
    public static PricedAlternate Between(JobEstimate before, JobEstimate after, IReadOnlyCollection<string> ids)
    {
        var page = new PageWriter(PageNumber);
        Fact More(string label, Fact with, Fact without) =>
            page.Compute(Operation.Difference, "alternate", label, with.Unit, with, page.Given("$", "The job without it", without.Value, without.Unit));
        return new PricedAlternate
        {
            Ids = [.. ids],
            After = after,
            Price = More("Price with it less the price without it", after.Bid.Price, before.Bid.Price),
            Hours = More("Hours with it less the hours without it", after.Labor.Total, before.Labor.Total),
            Parts = Parts(before, after),
            NewFindings = Only(after, before),
            EndedFindings = Only(before, after),
            Book = new ExplanationBook(after.Book.Pages.Append(page.ToPage())),
        };
    }

    private static ImmutableArray<Finding> Only(JobEstimate here, JobEstimate there)
    {
        var known = there.Findings.Select(f => (f.Code, f.Text)).ToHashSet();
        return [.. here.Findings.Where(f => !known.Contains((f.Code, f.Text)))];
    }

    private static ImmutableArray<AddedPart> Parts(JobEstimate before, JobEstimate after)
    {
        Dictionary<string, decimal> Quantities(JobEstimate estimate) => estimate.Takeoff.Lines.GroupBy(l => l.ItemId, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.Sum(l => l.Quantity.Value), StringComparer.Ordinal);
        var (old, now) = (Quantities(before), Quantities(after));
        return [.. after.Takeoff.Lines.Concat(before.Takeoff.Lines).DistinctBy(l => l.ItemId)
            .Select(l => new AddedPart(l.ItemId, l.Description, l.Unit, now.GetValueOrDefault(l.ItemId) - old.GetValueOrDefault(l.ItemId))).Where(p => p.Quantity != 0)];
    }
}
