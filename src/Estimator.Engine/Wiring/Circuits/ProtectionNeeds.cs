using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>What protection the devices of a box ask of their circuit.</summary>
internal static class ProtectionNeeds
{
    /// <summary>Whether an outlet of the box must have ground-fault protection.</summary>
    internal static bool GroundFault(HouseLayout layout, DraftBox draft) => Holds(layout, "ground-fault-protection") && Any(layout, draft, ProtectionRules.GroundFault);

    /// <summary>Whether an outlet or device of the box must have arc-fault protection.</summary>
    internal static bool ArcFault(HouseLayout layout, DraftBox draft) => Holds(layout, "arc-fault-protection") && Any(layout, draft, ProtectionRules.ArcFault);

    /// <summary>Whether the box protects itself and what it feeds: its receptacle has ground-fault protection built in.</summary>
    internal static bool ProtectsItself(HouseLayout layout, DraftBox draft) =>
        draft.Devices.Any(d => layout.Devices[d].Kind is DeviceKind.GfciReceptacle);

    /// <summary>Whether a receptacle with ground-fault protection could stand in the box.</summary>
    internal static bool TakesGroundFaultReceptacle(HouseLayout layout, DraftBox draft) => draft.Devices.Length == 1
        && layout.Devices[draft.Devices[0]].Kind is DeviceKind.DuplexReceptacle or DeviceKind.GfciReceptacle;

    // A local rule may waive the protection, and then nobody pays for it.
    private static bool Holds(HouseLayout layout, string rule) => LocalRules.InForce(layout.House.Job.Code, CodeRules.For(rule, layout.House.Job.Code.Edition));

    private static bool Any(HouseLayout layout, DraftBox draft, Func<CodeBasis, OutletPlace, ProtectionRule> rule)
    {
        var code = layout.House.Job.Code;
        return draft.Equipment >= 0
            ? rule(code, OutletPlaces.Of(layout, layout.Equipment[draft.Equipment])).Required
            : draft.Devices.Any(d => rule(code, OutletPlaces.Of(layout, layout.Devices[d])).Required);
    }
}
