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
        Legs = [Leg(page, priced, 0), Leg(page, priced, 1)];
        Source = new FigureSource(new ExplanationBook(priced.Source.Book.Pages.Append(page.ToPage())), priced.Job);
    }

    /// <summary>The rows.</summary>
    public ImmutableArray<CircuitRow> Rows { get; }

    /// <summary>Load of all new circuits.</summary>
    public Fact Load { get; }

    /// <summary>Cable of all circuits.</summary>
    public Fact CableFeet { get; }

    /// <summary>Load of the new circuits on leg A and leg B of the first panel, as the cabinet proposes them.</summary>
    public ImmutableArray<Fact> Legs { get; }

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

    private static Fact Leg(PageWriter page, PricedJob priced, int leg)
    {
        var label = leg == 0 ? "New load on leg A" : "New load on leg B";
        if (priced.Job.Panels.IsEmpty)
        {
            return page.Sum("leg-load", label, Unit.VoltAmperes, []);
        }

        var circuits = priced.Estimate.Wiring.Circuits.Select((c, i) => (Circuit: c, Number: i + 1)).Where(c => c.Circuit.Panel == 0).ToList();
        List<Fact> loads = [];
        foreach (var space in PanelArranging.Of(priced.Job.Panels[0], circuits).Where(s => s.Circuit > 0))
        {
            var load = circuits.First(c => c.Number == space.Circuit).Circuit.LoadVa;
            if (space.Rows > 1)
            {
                loads.Add(page.Compute(Operation.Quotient, "leg-load", "Half of a two-pole circuit", Unit.VoltAmperes, load, page.Constant("Legs", 2)));
            }
            else if (space.Row % 2 == leg)
            {
                loads.Add(load);
            }
        }

        return page.Sum("leg-load", label, Unit.VoltAmperes, loads);
    }
}
