using Estimator.Engine.Findings;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>A feeder and the worst circuit behind it together lose no more voltage than advised.</summary>
/// <remarks>The feeder alone is judged with its load. Advice, not a rule. Source: NEC 215.2 note, 5% over both.</remarks>
internal static class FeederDrop
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        if (context.Rule("drop-together") is not { } rule)
        {
            yield break;
        }

        var most = PracticeDefaults.ThickerConductorDropPercent.Number();
        foreach (var feeder in context.Loads.Feeders)
        {
            if (feeder.VoltageDropPercent is not { } drop || Worst(context, feeder.PanelId) is not { } circuit)
            {
                continue;
            }

            context.Applies(rule);
            var together = drop.Value + circuit.VoltageDropPercent.Value;
            if (together > most)
            {
                yield return context.Asked(
                    rule, $"The feeder of panel {feeder.PanelId} loses {drop.Value:0.0}% and circuit {circuit.Name} behind it {circuit.VoltageDropPercent.Value:0.0}%, {together:0.0}% together; {most:0.#}% is advised. A thicker feeder, a thicker cable or a nearer panel helps.",
                    [feeder.PanelId, circuit.Id], Severity.Advice) with
                { Figures = [drop.Node, circuit.VoltageDropPercent.Node] };
            }
        }
    }

    private static Wiring.Circuits.Circuit? Worst(CheckContext context, string panel) =>
        context.Wiring.Circuits.Where(c => context.Layout.Panels[c.Panel].Source.Id == panel).MaxBy(c => c.VoltageDropPercent.Value);
}
