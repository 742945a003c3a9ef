using Estimator.Engine.Framing;
using Estimator.Engine.House;

namespace Estimator.Engine.Layout;

/// <summary>Where a stair comes out on the level above.</summary>
internal static class StairAbove
{
    /// <summary>The room over the middle of a stair that people pass; null where the job has none, as over the highest stair.</summary>
    internal static int? Of(FramedHouse house, FramedRoom stair)
    {
        if (stair.Level + 1 >= house.Levels.Length)
        {
            return null;
        }

        var middle = RoomPoints.Middle(stair);
        return house.Levels[stair.Level + 1].Rooms
            .Where(r => house.Rooms[r].Source.Kind is RoomKind.Stair or RoomKind.Hall or RoomKind.Foyer or RoomKind.Void && Polygons.Holds(house.Rooms[r].Corners, middle))
            .Select(r => (int?)r).FirstOrDefault();
    }
}
