using Estimator.Engine.House;
using Estimator.Web.Jobs;

namespace Estimator.Web.Appliances;

/// <summary>What is done to the equipment of a job, as functions from a job to the next one.</summary>
public static class EquipmentActs
{
    /// <summary>The job with a piece changed.</summary>
    public static Job With(Job job, string id, Func<Equipment, Equipment> change) => job with { Equipment = [.. job.Equipment.Select(e => e.Id == id ? change(e) : e)] };

    /// <summary>The job without a piece.</summary>
    public static Job Remove(Job job, string id) => job with { Equipment = [.. job.Equipment.Where(e => e.Id != id)] };

    /// <summary>The job with one more piece, in the room where such a piece usually stands.</summary>
    public static Job Add(Job job, string id, EquipmentKind kind, string name) =>
        job with { Equipment = job.Equipment.Add(new Equipment { Id = id, Kind = kind, Name = name, Room = UsualRoom(job, kind), BurnsFuel = false }) };

    /// <summary>A piece in another room: where it stood in the old one says nothing there.</summary>
    public static Equipment Move(Equipment equipment, string room) => equipment with { Room = room, At = null, Wall = null };

    // Common practice, no source: the user moves it where this is wrong.
    private static string UsualRoom(Job job, EquipmentKind kind)
    {
        ReadOnlySpan<RoomKind> wanted = kind switch
        {
            EquipmentKind.Range or EquipmentKind.Oven or EquipmentKind.Cooktop or EquipmentKind.Dishwasher or EquipmentKind.Disposal or EquipmentKind.Microwave or EquipmentKind.Refrigerator => [RoomKind.Kitchen],
            EquipmentKind.Dryer => [RoomKind.Laundry, RoomKind.Utility],
            EquipmentKind.EvCharger => [RoomKind.Garage, RoomKind.Outdoors],
            EquipmentKind.AirConditioner or EquipmentKind.HeatPump => [RoomKind.Outdoors, RoomKind.Utility, RoomKind.Garage],
            EquipmentKind.WaterHeater or EquipmentKind.Furnace => [RoomKind.Utility, RoomKind.Garage, RoomKind.Basement],
            EquipmentKind.SumpPump => [RoomKind.Basement, RoomKind.Utility],
            _ => [],
        };
        foreach (var roomKind in wanted)
        {
            if (RoomActs.All(job).FirstOrDefault(r => r.Kind == roomKind) is { } room)
            {
                return room.Id;
            }
        }

        return job.Panels[0].Room;
    }
}
