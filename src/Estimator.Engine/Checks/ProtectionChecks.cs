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
        foreach (var circuit in context.Wiring.Circuits)
        {
            var behindFirst = circuit.FirstReceptacleProtects;
            foreach (var box in circuit.Boxes.Select(b => context.Wiring.Boxes[b]))
            {
                var own = box.OwnGroundFault || box.Devices.Any(d => context.Layout.Devices[d].Kind is DeviceKind.GfciReceptacle);
                var groundFault = circuit.Protection is Protection.GroundFault or Protection.DualFunction || behindFirst || own;
                var arcFault = circuit.Protection is Protection.ArcFault or Protection.DualFunction;
                foreach (var finding in Missing(context, circuit, box, groundFault, ProtectionRules.GroundFault, GroundFault)
                    .Concat(Missing(context, circuit, box, arcFault, ProtectionRules.ArcFault, ArcFault)))
                {
                    yield return finding;
                }
            }
        }
    }

    private static IEnumerable<Finding> Missing(
        CheckContext context, Circuit circuit, Box box, bool protectedNow, Func<CodeEdition, OutletPlace, ProtectionRule> rule, string code)
    {
        var asked = Places(context, box).Select(p => rule(context.Edition, p)).FirstOrDefault(r => r.Required);
        if (asked is { Row: { } row } && !protectedNow && !context.Waives(code))
        {
            yield return context.Asked(
                code, asked.Article, $"{row.Label} in {context.RoomName(box.Place.Room)} has no {code.Replace("-protection", "", StringComparison.Ordinal)} protection on circuit {circuit.Name}. Protect the circuit at its breaker.",
                [box.Id, circuit.Id], verified: asked.Verified);
        }
    }

    private static IEnumerable<OutletPlace> Places(CheckContext context, Box box) => box.Equipment >= 0
        ? [OutletPlaces.Of(context.Layout, context.Layout.Equipment[box.Equipment])]
        : box.Devices.Select(d => OutletPlaces.Of(context.Layout, context.Layout.Devices[d]));
}
