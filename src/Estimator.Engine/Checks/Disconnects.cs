using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Circuits;

namespace Estimator.Engine.Checks;

/// <summary>Hard-wired equipment can be cut off by whoever works on it.</summary>
/// <remarks>
/// Where the panel hangs in the same room within sight, its breaker serves. A breaker with a lock serves fixed appliances and vehicle supply equipment, and not
/// air conditioners. Source: NEC 422.31, 440.14, 625.43.
/// </remarks>
internal static class Disconnects
{
    internal static IEnumerable<Finding> Judge(CheckContext context) => context.Fed().Where(f => f.Equipment.Connection is Connection.HardWired)
        .SelectMany(f => Of(context, f.Equipment, f.Circuit));

    private static IEnumerable<Finding> Of(CheckContext context, LaidEquipment equipment, Circuit circuit)
    {
        if (KeyOf(context, equipment, circuit) is not { } key || context.Rule(key) is not { } rule)
        {
            return [];
        }

        var (name, room, lockServes) = (ServiceReceptacles.Named(equipment), context.RoomName(equipment.Place.Room), rule.Code != "ac-disconnect");
        var sight = PlacingLimits.Sight.Feet();
        var held = InSight(context, equipment, circuit, sight.ToSixteenths()) || equipment.Source.Disconnect is DisconnectPlace.WithinSight
            || (lockServes && equipment.Source.Disconnect is DisconnectPlace.Lockable);
        return context.Ask(
            rule, held,
            () => equipment.Source.Disconnect is null
                ? $"How {name} in {room} is cut off for service is not stated: a disconnect in sight and not over {sight} away{(lockServes ? ", or a lock on its breaker," : "")} is asked for. State it."
                : (FormattableString)$"{name} in {room} has no disconnect in sight and not over {sight} away{(lockServes ? ", nor a lock on its breaker" : ", and a lock on its breaker does not serve")}. Add one.",
            [equipment.Source.Id, circuit.Id], equipment.Source.Disconnect is null ? Severity.Unjudged : Severity.Mandatory);
    }

    private static string? KeyOf(CheckContext context, LaidEquipment equipment, Circuit circuit) => equipment.Source.Kind switch
    {
        EquipmentKind.AirConditioner or EquipmentKind.HeatPump => "ac-disconnect",
        EquipmentKind.EvCharger => context.Edition is CodeEdition.Nec2026 || circuit.BreakerA.Value > PlacingLimits.ChargerDisconnect.Number() ? "ev-disconnect" : null,
        EquipmentKind.ElectricHeat or EquipmentKind.SumpPump => null,
        _ => "appliance-disconnect",
    };

    private static bool InSight(CheckContext context, LaidEquipment equipment, Circuit circuit, int most) => context.Layout.Panels[circuit.Panel].Place is var panel
        && panel.Room == equipment.Place.Room && panel.Spot.StraightDistanceTo(equipment.Place.Spot) <= most;
}
