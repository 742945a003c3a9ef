using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Circuits;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Checks;

/// <summary>How many cables may lie side by side before they carry less than their breakers let through.</summary>
/// <remarks>
/// Said where more leave a panel than may be bundled; which hole each takes is the crew's. Two conductors of a cable are taken to carry current, adjusted from
/// the 90 C column. Source: NEC 334.80, 310.15(C)(1).
/// </remarks>
internal static class CableBundles
{
    private const int CarryingConductors = 2;

    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        if (context.Rule("bundled-cable") is not { } rule)
        {
            yield break;
        }

        for (var p = 0; p < context.Layout.Panels.Length; p++)
        {
            var circuits = context.Wiring.Circuits.Where(c => c.Panel == p && HomeRuns(context, c) > 0).ToList();
            if (circuits.Count == 0)
            {
                continue;
            }

            context.Applies(rule);
            var (most, leaving) = (circuits.Min(Most), circuits.Sum(c => HomeRuns(context, c)));
            if (leaving > most)
            {
                var panel = context.Layout.Panels[p].Source;
                yield return context.Asked(
                    rule, $"{leaving} cables leave panel {panel.Called()}: let no more than {most} lie side by side through one sealed hole or along insulation, or they carry less than their breakers let through.",
                    [panel.Id], Severity.Note);
            }
        }
    }

    private static int HomeRuns(CheckContext context, Circuit circuit) =>
        circuit.Runs.Select(r => context.Wiring.Runs[r]).Count(r => r.Role is RunRole.HomeRun && RunMethods.Raceway(r.Cable.Method) is null);

    private static int Most(Circuit circuit)
    {
        var (carries, cables) = (Conductors.For(circuit.Wire).Number("ampacity_cu_90C"), 1);
        while (cables < MostCables && carries * AmpacityRules.Adjustment((cables + 1) * CarryingConductors) / 100m >= circuit.BreakerA.Value)
        {
            cables++;
        }

        return cables;
    }

    // The last row of the table begins below this.
    private const int MostCables = 24;
}
