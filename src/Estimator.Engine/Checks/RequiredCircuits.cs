using System.Collections.Immutable;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>The circuits that a dwelling must have, and enough of them for its floor area.</summary>
/// <remarks>Judged only for what the job wires: a basement finish needs no kitchen circuits. Source: NEC 210.11.</remarks>
internal static class RequiredCircuits
{
    internal const string Code = "required-circuits";

    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        if (context.Rule(Code) is not { } rule)
        {
            yield break;
        }

        ImmutableArray<string> kitchens = [.. context.House.Rooms.Where(r => r.Source.Kind is RoomKind.Kitchen && context.In(r.Index).Any()).Select(r => r.Source.Id)];
        var small = context.Wiring.Circuits.Count(c => c.Kind is CircuitKind.SmallAppliance);
        var needed = (int)context.Limit(Code, WiringSettings.SmallApplianceCircuits);
        if (!kitchens.IsEmpty)
        {
            foreach (var finding in context.Ask(
                rule, small >= needed, () => $"The kitchen is fed by {small} small-appliance circuits and {needed} are asked for. Add receptacles at the counter or split them.", kitchens))
            {
                yield return finding;
            }
        }

        foreach (var circuit in context.Wiring.Circuits.Where(c => c.Kind is CircuitKind.SmallAppliance or CircuitKind.Laundry or CircuitKind.Bathroom or CircuitKind.Garage))
        {
            context.Applies(rule);
            var asked = CircuitRatings.For(circuit.Kind);
            if (circuit.BreakerA.Value != asked.Number())
            {
                yield return context.Asked(
                    rule, $"Circuit {circuit.Name} has a {circuit.BreakerA.Value:0} A breaker; {asked.Number():0} A is asked for.", [circuit.Id], article: asked.Source.Section);
            }
        }
    }
}
