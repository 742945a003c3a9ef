using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Panels;
using Estimator.Engine.Wiring.Boxes;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Which kind of circuit a unit belongs on.</summary>
/// <remarks>Source: NEC 210.11(C) and 210.52(B) for the required kinds; the rest is common practice, no source.</remarks>
internal static class CircuitKinds
{
    internal static CircuitKind Of(HouseLayout layout, ImmutableArray<DraftBox> drafts, ImmutableArray<int> boxes)
    {
        var first = drafts[boxes[0]];
        if (first.Equipment >= 0)
        {
            return OfEquipment(layout, layout.Equipment[first.Equipment]);
        }

        var device = layout.Devices[first.Devices[0]];
        if (device.Kind is DeviceKind.Receptacle240V)
        {
            return CircuitKind.Individual;
        }

        return boxes.Length == 1 && device.Kind.IsReceptacle() ? OfReceptacle(layout, device) : Lights(layout);
    }

    internal static bool Mixed(HouseLayout layout) => layout.House.Job.Practice.MixLightsAndReceptacles ?? false;

    private static CircuitKind OfEquipment(HouseLayout layout, LaidEquipment equipment) =>
        equipment.OwnCircuit ? CircuitKind.Individual
        : equipment.Source.Kind is EquipmentKind.Refrigerator && KindOf(layout, equipment.Place.Room) is RoomKind.Kitchen or RoomKind.Dining ? CircuitKind.SmallAppliance
        : General(layout);

    private static CircuitKind OfReceptacle(HouseLayout layout, LaidDevice device) => (device.Serves, KindOf(layout, device.Place.Room)) switch
    {
        (ServedPlace.Outdoors, _) or (_, RoomKind.Outdoors) => General(layout),
        (ServedPlace.Counter or ServedPlace.Island, _) or (_, RoomKind.Kitchen or RoomKind.Dining) => CircuitKind.SmallAppliance,
        (ServedPlace.Basin, _) or (_, RoomKind.Bathroom) => CircuitKind.Bathroom,
        (_, RoomKind.Laundry) => CircuitKind.Laundry,
        (_, RoomKind.Garage) => CircuitKind.Garage,
        _ => General(layout),
    };

    private static CircuitKind General(HouseLayout layout) => Mixed(layout) ? CircuitKind.General : CircuitKind.Receptacles;

    private static CircuitKind Lights(HouseLayout layout) => Mixed(layout) ? CircuitKind.General : CircuitKind.Lighting;

    private static RoomKind KindOf(HouseLayout layout, int room) => layout.House.Rooms[room].Source.Kind;
}
