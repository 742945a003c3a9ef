using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Wiring.Circuits;
using Estimator.Engine.Wiring.Routing;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;

namespace Estimator.Web.Circuits;

/// <summary>The circuits with their figures and totals.</summary>
public sealed class CircuitFigures
{
    private const int PageNumber = FigurePages.Circuits;

    private CircuitFigures(PricedJob priced)
    {
        var page = new PageWriter(PageNumber);
        var wiring = priced.Estimate.Wiring;
        Rows = [.. wiring.Circuits.Select((c, i) => Row(page, c, i + 1, [.. c.Runs.Select(r => wiring.Runs[r])]))];
        Load = page.Sum("new-load", "Load that the plan counts on the new circuits", Unit.VoltAmperes, [.. wiring.Circuits.Select(c => c.LoadVa)]);
        CableFeet = page.Sum("circuit-cable", "Cable of all circuits", Unit.Feet, [.. Rows.Select(r => r.CableFeet)]);
        Numbers = Rows.ToDictionary(r => r.Circuit.Id, r => r.Number, StringComparer.Ordinal);
        Source = new FigureSource(new ExplanationBook(priced.Source.Book.Pages.Append(page.ToPage())), priced.Job);
    }

    /// <summary>The rows.</summary>
    public ImmutableArray<CircuitRow> Rows { get; }

    /// <summary>Load of all new circuits.</summary>
    public Fact Load { get; }

    /// <summary>Cable of all circuits.</summary>
    public Fact CableFeet { get; }

    /// <summary>Number of each circuit on drawings, by its id.</summary>
    public IReadOnlyDictionary<string, int> Numbers { get; }

    /// <summary>What these figures are explained from.</summary>
    public FigureSource Source { get; }

    /// <summary>The figures of an estimate.</summary>
    public static CircuitFigures Of(PricedJob priced) => new(priced);

    private static CircuitRow Row(PageWriter page, Circuit circuit, int number, ImmutableArray<Run> runs)
    {
        var homeRun = runs.Where(r => r.Role is RunRole.HomeRun).Select(r => r.Total).ToList();
        return new CircuitRow(
            circuit, number, string.Join(", ", runs.Select(r => r.Cable.TradeName).Distinct().Order(StringComparer.Ordinal)),
            page.Compute(Operation.InFeet, "home-run", "Home run", Unit.Feet, page.Sum("home-run", "Home run", Unit.Length, homeRun)),
            page.Compute(Operation.InFeet, "circuit-cable", "Cable of the circuit", Unit.Feet, page.Sum("circuit-cable", "Runs of the circuit", Unit.Length, [.. runs.Select(r => r.Total)])));
    }
}
