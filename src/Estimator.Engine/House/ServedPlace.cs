namespace Estimator.Engine.House;

/// <summary>What a receptacle or light is there for; the layout rule and height follow from it.</summary>
public enum ServedPlace
{
    /// <summary>The room in general: wall receptacles, general lights.</summary>
    Room = 1,

    /// <summary>A kitchen counter.</summary>
    Counter,

    /// <summary>An island or peninsula.</summary>
    Island,

    /// <summary>A basin in a bathroom; a light over a vanity.</summary>
    Basin,

    /// <summary>An appliance, by its own receptacle.</summary>
    Appliance,

    /// <summary>The outside of the house.</summary>
    Outdoors,

    /// <summary>A closet, from inside it.</summary>
    Closet,
}
