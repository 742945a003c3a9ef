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
        var kitchen = context.Layout.House.Rooms.Any(r => r.Source.Kind is RoomKind.Kitchen && context.Layout.Devices.Any(d => d.Place.Room == r.Index));
        var small = context.Wiring.Circuits.Count(c => c.Kind is CircuitKind.SmallAppliance);
        var needed = (int)context.Limit(Code, WiringSettings.SmallApplianceCircuits);
        if (kitchen && small < needed)
        {
            yield return context.Asked(
                Code, "210.11(C)(1)", $"The kitchen is fed by {small} small-appliance circuits and {needed} are asked for. Add receptacles at the counter or split them.", []);
        }

        foreach (var circuit in context.Wiring.Circuits.Where(c => c.Kind is not (CircuitKind.Individual or CircuitKind.Lighting or CircuitKind.Receptacles or CircuitKind.General)))
        {
            var asked = CircuitRatings.For(circuit.Kind);
            if (circuit.BreakerA.Value != asked.Number())
            {
                yield return context.Asked(
                    Code, asked.Source.Section, $"Circuit {circuit.Name} has a {circuit.BreakerA.Value:0} A breaker; {asked.Number():0} A is asked for.", [circuit.Id]);
            }
        }
    }
}
