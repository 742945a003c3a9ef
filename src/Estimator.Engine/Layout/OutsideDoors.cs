using System.Collections.Immutable;
using Estimator.Engine.Framing;
using Estimator.Engine.House;

namespace Estimator.Engine.Layout;

/// <summary>The doors by which people leave the house. A vehicle door is none.</summary>
/// <remarks>Source: NEC 210.70(A)(2)(2).</remarks>
internal static class OutsideDoors
{
    /// <summary>Those of a room: to no other room, or to a deck, porch or yard that is drawn as one.</summary>
    internal static ImmutableArray<FramedOpening> Of(FramedHouse house, int room) => house.Rooms[room].Source.Kind is RoomKind.Outdoors or RoomKind.Void
        ? []
        : [.. house.Openings.Where(o => o.Room == room && o.Source.Kind is OpeningKind.EntranceDoor or OpeningKind.SlidingDoor)
            .Where(o => o.OtherRoom < 0 || house.Rooms[o.OtherRoom].Source.Kind is RoomKind.Outdoors)];

    /// <summary>Whether a deck, porch or yard is reached from inside.</summary>
    internal static bool Reached(FramedHouse house, int outdoors) => house.Openings.Any(o => o.Room == outdoors && o.OtherRoom >= 0
        && o.Source.Kind is not OpeningKind.Window && house.Rooms[o.OtherRoom].Source.Kind is not RoomKind.Outdoors);

    /// <summary>Whether a level lies at grade: the lowest that is no basement.</summary>
    internal static bool AtGrade(FramedHouse house, int level) =>
        level == house.Levels.Where(l => !l.Source.Basement).Select(l => l.Index).DefaultIfEmpty(0).Min();
}
