namespace Estimator.Engine.House;

/// <summary>What a room is used for.</summary>
public enum RoomKind
{
    /// <summary>Living room, parlor, library or the like.</summary>
    Living = 1,

    /// <summary>Dining room.</summary>
    Dining,

    /// <summary>Family or recreation room.</summary>
    Family,

    /// <summary>Kitchen, with any dining or living space that is one with it.</summary>
    Kitchen,

    /// <summary>Bedroom.</summary>
    Bedroom,

    /// <summary>Den, study or office.</summary>
    Office,

    /// <summary>Habitable room whose use is not known.</summary>
    Habitable,

    /// <summary>Sunroom.</summary>
    Sunroom,

    /// <summary>Bathroom or powder room.</summary>
    Bathroom,

    /// <summary>Hallway.</summary>
    Hall,

    /// <summary>Entry or foyer.</summary>
    Foyer,

    /// <summary>Stair.</summary>
    Stair,

    /// <summary>Clothes closet.</summary>
    Closet,

    /// <summary>Storage room or pantry.</summary>
    Storage,

    /// <summary>Laundry.</summary>
    Laundry,

    /// <summary>Utility or mechanical room.</summary>
    Utility,

    /// <summary>Garage.</summary>
    Garage,

    /// <summary>Basement area that is not a room of another kind.</summary>
    Basement,

    /// <summary>Attic.</summary>
    Attic,

    /// <summary>Crawl space.</summary>
    Crawl,

    /// <summary>Balcony, deck, porch or other place outdoors.</summary>
    Outdoors,

    /// <summary>Shaft, elevator or void: no floor, and no cable passes.</summary>
    Void,

    /// <summary>None of these.</summary>
    Other,
}
