using Estimator.Engine.House;

namespace Estimator.Engine.Rules;

/// <summary>What the protection rules ask of an outlet.</summary>
public sealed record OutletPlace
{
    /// <summary>The room it is in.</summary>
    public required RoomKind Room { get; init; }

    /// <summary>Whether the room is finished.</summary>
    public bool Finished { get; init; } = true;

    /// <summary>Whether it lies in a basement, whatever the room is used for.</summary>
    public bool InBasement { get; init; }

    /// <summary>Whether the room is in a building that stands apart and is no dwelling, at grade and not meant to live in.</summary>
    public bool Accessory { get; init; }

    /// <summary>What it serves.</summary>
    public ServedPlace Serves { get; init; } = ServedPlace.Room;

    /// <summary>Whether a sink is within reach.</summary>
    public bool WithinSixFeetOfSink { get; init; }

    /// <summary>Whether a tub or shower is within reach.</summary>
    public bool WithinSixFeetOfTub { get; init; }

    /// <summary>120 or 240.</summary>
    public int Volts { get; init; } = 120;

    /// <summary>Whether it is a receptacle.</summary>
    public bool IsReceptacle { get; init; } = true;

    /// <summary>The equipment that it serves; null for none.</summary>
    public EquipmentKind? Equipment { get; init; }

    /// <summary>Whether the equipment is hard-wired.</summary>
    public bool HardWired { get; init; }

    /// <summary>Whether the room has a sink and a counter for food or drink, though it is no kitchen.</summary>
    public bool ServesFood { get; init; }

    /// <summary>Whether the equipment is driven by an inverter.</summary>
    public bool Inverter { get; init; }

    /// <summary>Rating of its overcurrent device in amperes, where the nameplate states one.</summary>
    public decimal? DeviceA { get; init; }
}
