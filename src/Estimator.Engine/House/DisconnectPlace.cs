namespace Estimator.Engine.House;

/// <summary>How a piece of equipment is cut off for service.</summary>
public enum DisconnectPlace
{
    /// <summary>A disconnect of its own that is seen from the equipment and not over 50 ft away; it is counted.</summary>
    WithinSight = 1,

    /// <summary>Its breaker, with a lock on it.</summary>
    Lockable,

    /// <summary>None.</summary>
    None,
}
