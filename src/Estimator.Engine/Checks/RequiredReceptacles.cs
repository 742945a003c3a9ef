using Estimator.Engine.Findings;
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
        for (var room = 0; room < context.Layout.House.Rooms.Length; room++)
        {
            var framed = context.Layout.House.Rooms[room];
            var outdoors = framed.Source.Kind is RoomKind.Outdoors;
            var have = context.Layout.Devices.Count(d => d.Place.Room == room && d.Kind.IsReceptacle() && d.Kind is not DeviceKind.Receptacle240V && (outdoors || d.Serves is not ServedPlace.Outdoors));
            var (needed, article) = framed.Source.Kind switch
            {
                RoomKind.Bathroom => (1, "210.52(D)"),
                RoomKind.Hall => (ReceptacleCounts.Hallway(HallLength.Of(framed)), "210.52(H)"),
                RoomKind.Foyer => (ReceptacleCounts.Foyer(context.Layout.House, framed), "210.52(I)"),
                RoomKind.Laundry => ((int)ReceptacleRules.Laundry.Number(), "210.52(F)"),
                RoomKind.Garage => (VehicleBays.Of(context.Layout.House, room) * (int)ReceptacleRules.GarageBay.Number(), "210.52(G)(1)"),
                RoomKind.Basement when !framed.Source.Finished => ((int)ReceptacleRules.BasementPortion.Number(), "210.52(G)(3)"),
                RoomKind.Utility when !framed.Source.Finished && context.Layout.House.Levels[framed.Level].Source.Basement => ((int)ReceptacleRules.BasementPortion.Number(), "210.52(G)(3)"),
                RoomKind.Outdoors when OutsideDoors.Reached(context.Layout.House, room) => ((int)ReceptacleRules.Deck.Number(), "210.52(E)(3)"),
                _ => (0, ""),
            };
            if (have < needed)
            {
                yield return context.Asked(
                    "required-receptacle", article, $"{context.RoomName(room)} has {have} receptacles and {needed} are asked for. Add {needed - have}.", [framed.Source.Id]);
            }
        }
    }
}
