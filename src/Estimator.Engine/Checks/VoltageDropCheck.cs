using Estimator.Engine.Findings;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Circuits;

namespace Estimator.Engine.Checks;

/// <summary>The farthest outlet of a circuit loses no more voltage than advised.</summary>
/// <remarks>Advice, not a rule. Source: NEC 210.19 note.</remarks>
internal static class VoltageDropCheck
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        if (context.Rule("voltage-drop") is not { } rule || context.Wiring.Circuits.IsEmpty)
        {
            yield break;
        }

        context.Applies(rule);
        var limit = LocalRules.Figure(context.Job.Code, rule.Code, CircuitDrop.Limit(context.Job, context.Page).Value);
        foreach (var circuit in context.Wiring.Circuits.Where(c => c.VoltageDropPercent.Value > limit))
        {
            yield return context.Asked(
                rule, $"Circuit {circuit.Name} loses {circuit.VoltageDropPercent.Value:0.0}% to its farthest outlet; {limit:0.#}% is advised. A thicker conductor or a nearer panel helps.",
                [circuit.Id], Severity.Advice) with
            { Figures = [circuit.VoltageDropPercent.Node] };
        }
    }
}
