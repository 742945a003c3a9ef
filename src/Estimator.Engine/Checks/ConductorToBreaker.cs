using Estimator.Engine.Findings;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>Conductors carry what the breaker lets through.</summary>
/// <remarks>Motor and air-conditioner circuits follow the nameplate, 240.4(G). Source: NEC 240.4, 334.80.</remarks>
internal static class ConductorToBreaker
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        if (context.Rule("conductor-to-breaker") is not { } rule)
        {
            yield break;
        }

        foreach (var circuit in context.Wiring.Circuits)
        {
            context.Applies(rule);
            var row = Conductors.For(circuit.Wire);
            var carries = row.Number("ampacity_cu_60C");
            var byNameplate = circuit.Kind is CircuitKind.Individual && circuit.Boxes.Any(b => context.Boxes[b].Equipment is >= 0 and var e
                && context.Layout.Equipment[e].Source.MinimumCircuitAmpacityA is { } mca && mca.ToAmperes() <= carries);
            var most = row.Has("ocpd_max_cu_240_4_D") ? row.Number("ocpd_max_cu_240_4_D") : StandardBreakers.AtLeast(carries).Number();
            if (circuit.BreakerA.Value > most && !byNameplate)
            {
                yield return context.Asked(
                    rule, $"Circuit {circuit.Name}: {circuit.Wire} AWG copper on a {circuit.BreakerA.Value:0} A breaker; {most:0} A is the most. Use a thicker conductor or a smaller breaker.",
                    [circuit.Id]);
            }
        }
    }
}
