using Estimator.Engine.Explanations;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Loads;

/// <summary>Demand of clothes dryers.</summary>
/// <remarks>Each at least 5,000 VA in the standard method. Source: NEC 220.54.</remarks>
public static class DryerDemand
{
    /// <summary>The demand in volt-amperes.</summary>
    public static Fact Of(PageWriter page, IReadOnlyList<Fact> dryers)
    {
        if (dryers.Count == 0)
        {
            return page.Constant("No dryers", 0, Unit.VoltAmperes);
        }

        var least = LoadRules.DryerLeast.Read(page, Unit.VoltAmperes);
        var connected = page.Sum("dryers-connected", "Dryers, each at least the floor", Unit.VoltAmperes, [.. dryers.Select(d => page.Compute(Operation.Maximum, "dryer-least", "Dryer", Unit.VoltAmperes, d, least))]);
        return page.Compute(Operation.PercentOf, "dryer-demand", "Demand of dryers", Unit.VoltAmperes, connected, DemandTables.Dryers(dryers.Count).Read(page, Unit.Percent, "percent"));
    }
}
