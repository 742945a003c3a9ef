using Estimator.Engine.House;

namespace Estimator.Web.Rooms;

/// <summary>Uses of rooms in trade words, and the use that a name speaks of.</summary>
public static class RoomWords
{
    /// <summary>The word for a use.</summary>
    public static string Of(RoomKind kind) => kind switch
    {
        RoomKind.Crawl => "Crawl space",
        RoomKind.Utility => "Utility, mechanical",
        RoomKind.Office => "Office, den",
        RoomKind.Habitable => "Habitable, use not known",
        RoomKind.Family => "Family room",
        RoomKind.Living => "Living room",
        RoomKind.Dining => "Dining room",
        RoomKind.Void => "Shaft, void",
        _ => kind.ToString(),
    };

    /// <summary>The use that a name speaks of; a room whose name says nothing is habitable.</summary>
    public static RoomKind Guess(string name)
    {
        var words = name.ToUpperInvariant();
        foreach (var (part, kind) in Parts)
        {
            if (words.Contains(part, StringComparison.Ordinal))
            {
                return kind;
            }
        }

        return RoomKind.Habitable;
    }

    private static readonly (string Part, RoomKind Kind)[] Parts =
    [
        ("BATH", RoomKind.Bathroom), ("POWDER", RoomKind.Bathroom), ("BED", RoomKind.Bedroom), ("KITCHEN", RoomKind.Kitchen), ("DINING", RoomKind.Dining), ("LIVING", RoomKind.Living),
        ("FAMILY", RoomKind.Family), ("REC", RoomKind.Family), ("GARAGE", RoomKind.Garage), ("LAUNDRY", RoomKind.Laundry), ("HALL", RoomKind.Hall), ("FOYER", RoomKind.Foyer),
        ("ENTRY", RoomKind.Foyer), ("STAIR", RoomKind.Stair), ("CLOSET", RoomKind.Closet), ("PANTRY", RoomKind.Storage), ("STORAGE", RoomKind.Storage), ("MECH", RoomKind.Utility),
        ("UTILITY", RoomKind.Utility), ("OFFICE", RoomKind.Office), ("DEN", RoomKind.Office), ("STUDY", RoomKind.Office), ("SUN", RoomKind.Sunroom), ("ATTIC", RoomKind.Attic),
        ("CRAWL", RoomKind.Crawl), ("DECK", RoomKind.Outdoors), ("PORCH", RoomKind.Outdoors), ("PATIO", RoomKind.Outdoors), ("OUTDOOR", RoomKind.Outdoors), ("BASEMENT", RoomKind.Basement),
    ];
}
