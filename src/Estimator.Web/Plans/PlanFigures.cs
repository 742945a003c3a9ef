using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;

namespace Estimator.Web.Plans;

/// <summary>Figures that the plan shows and no stage makes, each with its explanation.</summary>
/// <param name="CircuitCable">Cable of each circuit, by its index.</param>
/// <param name="Source">What the plan's figures are explained from.</param>
public sealed record PlanFigures(ImmutableArray<Fact> CircuitCable, FigureSource Source)
{
    /// <summary>Number of the page of the explanation book, apart from those of the engine and the frame.</summary>
    public const int PageNumber = FigurePages.Plan;

    /// <summary>The figures of an estimate.</summary>
    public static PlanFigures Of(PricedJob priced)
    {
        var page = new PageWriter(PageNumber);
        var wiring = priced.Estimate.Wiring;
        ImmutableArray<Fact> cable = [.. wiring.Circuits.Select(c => page.Compute(
            Operation.InFeet, "circuit-feet", "Cable of the circuit", Unit.Feet, page.Sum("circuit-cable", "Its runs together", Unit.Length, [.. c.Runs.Select(r => wiring.Runs[r].Total)])))];
        return new PlanFigures(cable, priced.Source with { Book = new ExplanationBook(priced.Source.Book.Pages.Append(page.ToPage())) });
    }
}
