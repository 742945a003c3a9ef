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
        for (var room = 0; room < context.Layout.House.Rooms.Length; room++)
        {
            var source = context.Layout.House.Rooms[room].Source;
            foreach (var door in OutsideDoors.AtGrade(context.Layout.House, context.Layout.House.Rooms[room].Level) ? OutsideDoors.Of(context.Layout.House, room) : [])
            {
                if (!LitOutside(context, door, switched))
                {
                    yield return context.Asked(
                        "entrance-light", "210.70(A)(2)(2)", $"The door from {context.RoomName(room)} to the outside has no light outside with a wall switch. Add a wall light that serves the outside, and a switch.", [source.Id, door.Source.Id]);
                }
            }

            if (!AppliesTo(source.Kind))
            {
                continue;
            }

            var strict = source.Kind is RoomKind.Kitchen or RoomKind.Bathroom;
            var lit = Enumerable.Range(0, context.Layout.Devices.Length).Any(d => context.Layout.Devices[d] is var device && device.Place.Room == room && switched.Contains(d)
                && (device.Kind is DeviceKind.CeilingLight or DeviceKind.RecessedLight or DeviceKind.WallLight or DeviceKind.CeilingFan || (!strict && device.Kind is DeviceKind.HalfHotReceptacle)));
            if (!lit)
            {
                yield return context.Asked(
                    "lighting-outlet", "210.70(A)", $"{context.RoomName(room)} has no lighting outlet with a wall switch. Add a light and a switch.", [source.Id]);
            }
        }
    }

    private static bool LitOutside(CheckContext context, FramedOpening door, HashSet<int> switched) => switched.Select(d => context.Layout.Devices[d])
        .Any(d => d.Kind.IsLuminaireOrFan() && ((d.Place.Room == door.Room && d.Serves is ServedPlace.Outdoors) || (door.OtherRoom >= 0 && d.Place.Room == door.OtherRoom)));

    internal static bool AppliesTo(RoomKind kind) => kind is RoomKind.Living or RoomKind.Dining or RoomKind.Family or RoomKind.Kitchen or RoomKind.Bedroom
        or RoomKind.Office or RoomKind.Habitable or RoomKind.Sunroom or RoomKind.Bathroom or RoomKind.Hall or RoomKind.Foyer or RoomKind.Stair or RoomKind.Garage or RoomKind.Laundry;
}
