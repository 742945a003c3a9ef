using Estimator.Engine.Explanations;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;

namespace Estimator.Web.Budget;

/// <summary>What a choice costs: the price of the job less the price of the same job without it.</summary>
/// <param name="Dollars">The difference.</param>
/// <param name="Source">What it is explained from.</param>
public sealed record ChoiceCost(Fact Dollars, FigureSource Source)
{
    private const int PageNumber = FigurePages.Choice;

    /// <summary>The cost, from both jobs worked out whole.</summary>
    public static ChoiceCost Of(PricedJob with, PricedJob without)
    {
        var page = new PageWriter(PageNumber);
        var dollars = page.Compute(
            Operation.Difference, "choice-cost", "What your choices cost", Unit.Dollars, with.Estimate.Bid.Price,
            page.Given("$", "Price of the same job without them, worked out whole", without.Estimate.Bid.Price.Value, Unit.Dollars));
        return new ChoiceCost(dollars, new FigureSource(new ExplanationBook(with.Source.Book.Pages.Append(page.ToPage())), with.Job));
    }
}
