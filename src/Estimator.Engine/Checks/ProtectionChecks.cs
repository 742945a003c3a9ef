using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Circuits;

namespace Estimator.Engine.Checks;

/// <summary>Outlets that must have ground-fault or arc-fault protection have it.</summary>
/// <remarks>Source: NEC 210.8 and 210.12.</remarks>
internal static class ProtectionChecks
{
    internal const string GroundFault = "ground-fault-protection";
    internal const string ArcFault = "arc-fault-protection";

    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        var (ground, arc) = (context.Rule(GroundFault), context.Rule(ArcFault));
        foreach (var circuit in context.Wiring.Circuits)
        {
            var arcFault = circuit.Protection is Protection.ArcFault or Protection.DualFunction;
            foreach (var box in circuit.Boxes.Select(b => context.Boxes[b]))
            {
                foreach (var finding in Missing(context, circuit, box, () => context.HasGroundFault(circuit, box), ProtectionRules.GroundFault, ground)
                    .Concat(Missing(context, circuit, box, () => arcFault, ProtectionRules.ArcFault, arc)))
                {
                    yield return finding;
                }
            }
        }
    }

    private static IEnumerable<Finding> Missing(
        CheckContext context, Circuit circuit, Box box, Func<bool> protectedNow, Func<CodeBasis, OutletPlace, ProtectionRule> rule, CodeRule? code)
    {
        if (code is null)
        {
            yield break;
        }

        context.Applies(code);
        var asked = Places(context, box).Select(p => rule(context.Job.Code, p)).FirstOrDefault(r => r.Required);
        if (asked is { Row: { } row } && !protectedNow())
        {
            yield return context.Asked(
                code, $"{row.Label} in {context.RoomName(box.Place.Room)} has no {code.Code.Replace("-protection", "", StringComparison.Ordinal)} protection on circuit {circuit.Name}. Protect the circuit at its breaker.",
                [box.Id, circuit.Id], article: asked.Article, verified: asked.Verified);
        }
    }

    private static IEnumerable<OutletPlace> Places(CheckContext context, Box box) => box.Equipment >= 0
        ? [OutletPlaces.Of(context.Layout, context.Layout.Equipment[box.Equipment])]
        : box.Devices.Select(d => OutletPlaces.Of(context.Layout, context.Layout.Devices[d]));
}
