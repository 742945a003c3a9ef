using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>Heating and cooling equipment has a receptacle near it on its level, from 2020 with ground-fault protection.</summary>
/// <remarks>Equipment outdoors is served by a receptacle outdoors, equipment indoors by one indoors: our reading. Source: NEC 210.63, 210.8(E).</remarks>
internal static class ServiceReceptacles
{
    internal static IEnumerable<Finding> Judge(CheckContext context) =>
        context.Layout.Equipment.Where(e => Serviced(e.Source.Kind)).SelectMany(e => Of(context, e));

    /// <summary>Whether equipment asks for one.</summary>
    internal static bool Serviced(EquipmentKind kind) => kind is EquipmentKind.Furnace or EquipmentKind.AirConditioner or EquipmentKind.HeatPump;

    private static IEnumerable<Finding> Of(CheckContext context, LaidEquipment equipment)
    {
        if (context.Rule("service-receptacle") is not { } rule)
        {
            return [];
        }

        var most = Length.FromFeet(context.Limit(rule.Code, PlacingLimits.ServiceReceptacleReach)).ToSixteenths();
        var near = Enumerable.Range(0, context.Layout.Devices.Length).Where(d => Serves(context, context.Layout.Devices[d], equipment, most)).ToList();
        var (name, room) = (Named(equipment), context.House.Rooms[equipment.Place.Room]);
        var asked = context.Ask(
            rule, near.Count > 0,
            () => $"{name} in {context.RoomName(room.Index)} has no receptacle within {Length.FromSixteenths(most)} on its level for whoever services it. Add one there.", [room.Source.Id, equipment.Source.Id]);
        if (near.Count == 0 || context.Rule("service-receptacle-protection") is not { } protection)
        {
            return asked;
        }

        return asked.Concat(context.Ask(
            protection, near.Any(d => context.BoxOf(d) is { } box && context.HasGroundFault(context.Wiring.Circuits[box.Circuit], box)),
            () => $"No receptacle within {Length.FromSixteenths(most)} of {name} in {context.RoomName(room.Index)} has ground-fault protection. Put one with protection built in there.",
            [room.Source.Id, equipment.Source.Id]));
    }

    private static bool Serves(CheckContext context, LaidDevice device, LaidEquipment equipment, int most) =>
        device.Kind.IsReceptacle() && device.Kind is not DeviceKind.Receptacle240V && device.Place.Level == equipment.Place.Level
        && Outdoors(context, device.Place.Room, device.Serves) == Outdoors(context, equipment.Place.Room, ServedPlace.Room)
        && device.Place.Spot.StraightDistanceTo(equipment.Place.Spot) <= most;

    private static bool Outdoors(CheckContext context, int room, ServedPlace serves) => serves is ServedPlace.Outdoors || context.House.Rooms[room].Source.Kind is RoomKind.Outdoors;

    /// <summary>What equipment is called.</summary>
    internal static string Named(LaidEquipment equipment) =>
        equipment.Source.Name.Length > 0 ? equipment.Source.Name : EquipmentDefaults.For(equipment.Source.Kind).Label;
}
