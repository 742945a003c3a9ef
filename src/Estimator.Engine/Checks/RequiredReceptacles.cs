using Estimator.Engine.Findings;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>Bathrooms, halls, foyers, laundries, garages, basements and the outside have their receptacles.</summary>
/// <remarks>Source: NEC 210.52(D) to (I).</remarks>
internal static class RequiredReceptacles
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        foreach (var room in context.House.Rooms)
        {
            var (needed, key) = Asked(context, room);
            if (key.Length == 0 || context.Rule(key) is not { } rule)
            {
                continue;
            }

            var outdoors = room.Source.Kind is RoomKind.Outdoors;
            var have = context.In(room.Index).Count(d => d.Kind.IsReceptacle() && d.Kind is not DeviceKind.Receptacle240V && (outdoors || d.Serves is not ServedPlace.Outdoors));
            foreach (var finding in context.Ask(
                rule, have >= needed, () => $"{context.RoomName(room.Index)} has {have} receptacles and {needed} are asked for. Add {needed - have}.", [room.Source.Id]))
            {
                yield return finding;
            }
        }
    }

    private static (int Needed, string Key) Asked(CheckContext context, FramedRoom room) => room.Source.Kind switch
    {
        RoomKind.Bathroom => (1, "required-bathroom"),
        RoomKind.Hall => (ReceptacleCounts.Hallway(HallLength.Of(room)), "required-hallway"),
        RoomKind.Foyer => (ReceptacleCounts.Foyer(context.House, room), "required-foyer"),
        RoomKind.Laundry => ((int)ReceptacleRules.Laundry.Number(), "required-laundry"),
        RoomKind.Garage => (VehicleBays.Of(context.House, room.Index) * (int)ReceptacleRules.GarageBay.Number(), "required-garage"),
        RoomKind.Basement when !room.Source.Finished => ((int)ReceptacleRules.BasementPortion.Number(), "required-basement"),
        RoomKind.Utility when !room.Source.Finished && context.House.Levels[room.Level].Source.Basement => ((int)ReceptacleRules.BasementPortion.Number(), "required-basement"),
        RoomKind.Outdoors when OutsideDoors.Reached(context.House, room.Index) => ((int)ReceptacleRules.Deck.Number(), "required-deck"),
        RoomKind.Outdoors when OutsideWalls.Touches(context.House, room.Index) => ((int)ReceptacleRules.Deck.Number(), "required-deck-beside"),
        _ => (0, ""),
    };
}
