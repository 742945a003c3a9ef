using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>What a box puts on its circuit.</summary>
internal static class BoxOutlets
{
    /// <summary>Its outlets; switches are none.</summary>
    internal static int Count(HouseLayout layout, DraftBox draft) =>
        draft.Equipment >= 0 ? 1 : draft.Devices.Count(d => !layout.Devices[d].Kind.IsSwitch());

    /// <summary>Its load in whole volt-amperes.</summary>
    internal static int LoadVa(HouseLayout layout, DraftBox draft) => draft.Equipment is >= 0 and var equipment
        ? decimal.ToInt32(decimal.Ceiling(layout.Equipment[equipment].LoadVa.Value))
        : draft.Devices.Sum(d => layout.Devices[d].Kind is var kind && (kind.IsLuminaireOrFan() || kind.IsAlarm()) ? decimal.ToInt32(LampLoads.For(kind).Number()) : 0);
}
