using Estimator.Engine.House;

namespace Estimator.Engine.Layout;

/// <summary>Which buildings that stand apart serve the house and are no dwelling of their own.</summary>
/// <remarks>One with a kitchen or a bedroom is taken for a dwelling. Source: NEC 210.8(A)(2) speaks of rooms not meant to live in, for storage and work.</remarks>
public static class AccessoryBuildings
{
    /// <summary>Whether a building is no dwelling.</summary>
    public static bool Is(Job job, Building building) =>
        !job.Levels.SelectMany(l => l.Rooms).Any(r => r.Building == building.Id && r.Kind is (RoomKind.Kitchen or RoomKind.Bedroom));

    /// <summary>Whether a room is in such a building, on a floor at grade, and not meant to live in.</summary>
    public static bool Holds(Job job, Room room, bool basement = false) => room.Building is { } id && !basement
        && job.Buildings.FirstOrDefault(b => b.Id == id) is { } building && Is(job, building)
        && room.Kind is (RoomKind.Storage or RoomKind.Utility or RoomKind.Other or RoomKind.Garage);
}
