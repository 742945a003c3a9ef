using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>Equipment that shares a circuit takes no more of it than it may.</summary>
/// <remarks>Equipment by cord and plug is taken as not fastened in place, hard-wired equipment as fastened. Source: NEC 210.23(A), 210.21(B)(2).</remarks>
internal static class PermissibleLoads
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        if (context.Rule("permissible-loads") is not { } rule)
        {
            yield break;
        }

        foreach (var circuit in context.Wiring.Circuits.Where(c => c.Kind is not CircuitKind.Individual))
        {
            var equipment = circuit.Boxes.Select(b => context.Boxes[b]).Where(b => b.Equipment >= 0).Select(b => context.Layout.Equipment[b.Equipment]).ToList();
            if (equipment.Count == 0)
            {
                continue;
            }

            var rating = circuit.BreakerA.Value * CircuitRatings.Volts.Number();
            var fastened = equipment.Where(e => e.Connection is Connection.HardWired).ToList();
            var (sum, half) = (fastened.Sum(e => e.LoadVa.Value), rating * LoadRules.FastenedCircuitPercent.Number() / 100);
            foreach (var finding in context.Ask(
                rule, sum <= half || circuit.Boxes.Length == equipment.Count,
                () => $"Fastened equipment on circuit {circuit.Name} takes {sum:0} VA; {half:0} VA is the most beside lights or receptacles. Give it a circuit of its own.", [circuit.Id, .. fastened.Select(e => e.Source.Id)]))
            {
                yield return finding;
            }

            var most = rating * LoadRules.PortablePercent.Number() / 100;
            foreach (var finding in equipment.Where(e => e.Connection is Connection.Receptacle).SelectMany(e => context.Ask(
                rule, e.LoadVa.Value <= most,
                () => $"{ServiceReceptacles.Named(e)} takes {e.LoadVa.Value:0} VA by cord and plug on circuit {circuit.Name}; {most:0} VA is the most. Give it a circuit of its own.", [circuit.Id, e.Source.Id])))
            {
                yield return finding;
            }
        }
    }
}
