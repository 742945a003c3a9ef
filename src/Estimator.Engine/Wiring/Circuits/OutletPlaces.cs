using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Says of an outlet what the protection rules ask: room, reach of sink and tub, voltage.</summary>
public static class OutletPlaces
{
    /// <summary>The place of a device.</summary>
    public static OutletPlace Of(HouseLayout layout, LaidDevice device)
    {
        var room = layout.House.Rooms[device.Place.Room].Source;
        return new OutletPlace
        {
            Room = device.Serves is ServedPlace.Outdoors ? RoomKind.Outdoors : room.Kind,
            Finished = room.Finished,
            InBasement = layout.House.Levels[device.Place.Level].Source.Basement,
            Accessory = AccessoryBuildings.Holds(layout.House.Job, room, layout.House.Levels[device.Place.Level].Source.Basement),
            Serves = device.Serves,
            WithinSixFeetOfSink = Near(layout, device.Place, FixtureKind.Sink),
            WithinSixFeetOfTub = Near(layout, device.Place, FixtureKind.Bathtub) || Near(layout, device.Place, FixtureKind.Shower),
            Volts = device.Kind is DeviceKind.Receptacle240V ? 240 : 120,
            IsReceptacle = device.Kind.IsReceptacle(),
            ServesFood = ServesFood(room),
        };
    }

    /// <summary>The place of a piece of equipment.</summary>
    public static OutletPlace Of(HouseLayout layout, LaidEquipment equipment)
    {
        var room = layout.House.Rooms[equipment.Place.Room].Source;
        return new OutletPlace
        {
            Room = room.Kind,
            Finished = room.Finished,
            InBasement = layout.House.Levels[equipment.Place.Level].Source.Basement,
            Accessory = AccessoryBuildings.Holds(layout.House.Job, room, layout.House.Levels[equipment.Place.Level].Source.Basement),
            Serves = ServedPlace.Appliance,
            WithinSixFeetOfSink = Near(layout, equipment.Place, FixtureKind.Sink),
            WithinSixFeetOfTub = Near(layout, equipment.Place, FixtureKind.Bathtub) || Near(layout, equipment.Place, FixtureKind.Shower),
            Volts = decimal.ToInt32(equipment.Volts.Value),
            IsReceptacle = equipment.Connection is Connection.Receptacle,
            Equipment = equipment.Source.Kind,
            HardWired = equipment.Connection is Connection.HardWired,
            ServesFood = ServesFood(room),
            Inverter = equipment.Source.Inverter,
            DeviceA = equipment.Source.MaximumOvercurrentDeviceA?.ToAmperes(),
        };
    }

    private static bool ServesFood(Room room) => room.Kind is not (RoomKind.Kitchen or RoomKind.Bathroom or RoomKind.Laundry)
        && !room.Counters.IsEmpty && room.Fixtures.Any(f => f.Kind is FixtureKind.Sink);

    private static bool Near(HouseLayout layout, Placement place, FixtureKind kind)
    {
        var reach = ProtectionRules.ReachOfWater.ToSixteenths();
        return layout.House.Rooms[place.Room].Source.Fixtures.Any(f => f.Kind == kind
            && f.At is { } at
            && layout.House.Pose.ToCanonical(new PlanPoint(at.X.ToSixteenths(), at.Y.ToSixteenths())).StraightDistanceTo(place.Spot) <= reach);
    }
}
