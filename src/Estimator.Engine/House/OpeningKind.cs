namespace Estimator.Engine.House;

/// <summary>What breaks a wall.</summary>
public enum OpeningKind
{
    /// <summary>Hinged door between rooms.</summary>
    Door = 1,

    /// <summary>Door to the outside.</summary>
    EntranceDoor,

    /// <summary>Sliding door.</summary>
    SlidingDoor,

    /// <summary>Door for vehicles.</summary>
    VehicleDoor,

    /// <summary>Window.</summary>
    Window,

    /// <summary>Wide opening without a door, or a line that only splits two uses of one space.</summary>
    WideOpening,
}
