using Estimator.Engine.Findings;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;

namespace Estimator.Engine.Checks;

/// <summary>Habitable rooms, kitchens, bathrooms, halls, stairs and garages have a switched lighting outlet.</summary>
/// <remarks>
/// Outside kitchens and bathrooms a switched receptacle may stand in. Each door at grade has a switched light outside, in the room that it leaves or on the
/// deck or porch that it leads to. Source: NEC 210.70(A).
/// </remarks>
internal static class LightingOutlets
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        var switched = context.Controls.Groups.Where(g => !g.Switches.IsEmpty).SelectMany(g => g.Loads).Select(l => l.Device).ToHashSet();
        var lit = switched.Select(d => context.Layout.Devices[d]).ToLookup(d => d.Place.Room);
        return context.House.Rooms.SelectMany(r => Entrances(context, r, switched).Concat(Inside(context, r, lit)));
    }

    private static IEnumerable<Finding> Entrances(CheckContext context, FramedRoom room, HashSet<int> switched)
    {
        if (!OutsideDoors.AtGrade(context.House, room.Level) || context.Rule("entrance-light") is not { } rule)
        {
            return [];
        }

        return OutsideDoors.Of(context.House, room.Index).SelectMany(door => context.Ask(
            rule, LitOutside(context, door, switched),
            () => $"The door from {context.RoomName(room.Index)} to the outside has no light outside with a wall switch. Add a wall light that serves the outside, and a switch.", [room.Source.Id, door.Source.Id]));
    }

    private static IEnumerable<Finding> Inside(CheckContext context, FramedRoom room, ILookup<int, LaidDevice> lit)
    {
        if (RuleOf(room, context.House) is not { } key || context.Rule(key) is not { } rule)
        {
            return [];
        }

        // Outside kitchens, bathrooms and what is no habitable room a switched receptacle does not stand in.
        var strict = room.Source.Kind is RoomKind.Kitchen or RoomKind.Bathroom || key is not "lighting-outlet";
        var has = lit[room.Index].Any(d => d.Serves is not ServedPlace.Outdoors
            && (d.Kind is DeviceKind.CeilingLight or DeviceKind.RecessedLight or DeviceKind.WallLight or DeviceKind.CeilingFan || (!strict && d.Kind is DeviceKind.HalfHotReceptacle)));
        return context.Ask(rule, has, () => $"{context.RoomName(room.Index)} has no lighting outlet with a wall switch. Add a light and a switch.", [room.Source.Id]);
    }

    private static string? RuleOf(FramedRoom room, FramedHouse house) => room.Source.Kind switch
    {
        RoomKind.Hall or RoomKind.Stair or RoomKind.Garage or RoomKind.Foyer => "lighting-passage",
        RoomKind.Laundry => "lighting-laundry",
        RoomKind.Storage or RoomKind.Other or RoomKind.Utility when AccessoryBuildings.Holds(house.Job, room.Source) => "lighting-accessory",
        RoomKind.Utility => "equipment-light",
        RoomKind.Basement => room.Source.Finished ? "lighting-outlet" : "equipment-light",
        RoomKind.Attic or RoomKind.Crawl => house.Job.Equipment.Any(e => e.Room == room.Source.Id) ? "equipment-light" : null,
        RoomKind.Living or RoomKind.Dining or RoomKind.Family or RoomKind.Kitchen or RoomKind.Bedroom or RoomKind.Office or RoomKind.Habitable or RoomKind.Sunroom
            or RoomKind.Bathroom => "lighting-outlet",
        _ => null,
    };

    private static bool LitOutside(CheckContext context, FramedOpening door, HashSet<int> switched) => switched.Select(d => context.Layout.Devices[d])
        .Any(d => d.Kind.IsLuminaireOrFan() && ((d.Place.Room == door.Room && d.Serves is ServedPlace.Outdoors) || (door.OtherRoom >= 0 && d.Place.Room == door.OtherRoom)));
}
