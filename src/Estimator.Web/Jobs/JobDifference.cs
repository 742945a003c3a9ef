using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;

namespace Estimator.Web.Jobs;

/// <summary>What a change to a job would do, found by working the changed job out whole.</summary>
/// <param name="Price">Change of the price.</param>
/// <param name="CableFeet">Change of the cable.</param>
/// <param name="Hours">Change of the hours.</param>
/// <param name="Circuits">Change of the number of circuits.</param>
/// <param name="Source">What these figures are explained from.</param>
public sealed record JobDifference(Fact Price, Fact CableFeet, Fact Hours, int Circuits, FigureSource Source)
{
    private const int PageNumber = FigurePages.Difference;

    /// <summary>Works it out. Takes long: not on a tab's thread.</summary>
    public static async Task<JobDifference> OfAsync(PricedJob now, Job changed)
    {
        var then = await EstimateShelf.TryAsync(changed, now.Catalogue, now.Estimate.Depth);
        var page = new PageWriter(PageNumber);
        Fact Change(string label, Fact after, Fact before) => page.Compute(
            Operation.Difference, "changed-job", label, after.Unit, after, page.Given("$", "As the job stands", before.Value, before.Unit));
        var price = Change("Change of the price", then.Estimate.Bid.Price, now.Estimate.Bid.Price);
        var cable = Change("Change of the cable", then.Figures.CableFeet, now.Figures.CableFeet);
        var hours = Change("Change of the hours", then.Estimate.Labor.Total, now.Estimate.Labor.Total);
        return new JobDifference(
            price, cable, hours, then.Estimate.Wiring.Circuits.Length - now.Estimate.Wiring.Circuits.Length,
            new FigureSource(new ExplanationBook(then.Source.Book.Pages.Append(page.ToPage())), then.Job));
    }
}
