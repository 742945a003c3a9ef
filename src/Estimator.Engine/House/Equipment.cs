using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>An appliance or other equipment.</summary>
public sealed record Equipment
{
    /// <summary>Stable id, unique in the job.</summary>
    public required string Id { get; init; }

    /// <summary>What.</summary>
    public required EquipmentKind Kind { get; init; }

    /// <summary>What people call it.</summary>
    public string Name { get; init; } = "";

    /// <summary>The room it stands in.</summary>
    public required string Room { get; init; }

    /// <summary>A point of the grid; null lets the Layout stage choose.</summary>
    public GridPoint? At { get; init; }

    /// <summary>A spot on a wall of the room; null lets the Layout stage choose.</summary>
    public WallSpot? Wall { get; init; }

    /// <summary>Nominal supply, 120 or 240 V; null follows the equipment table.</summary>
    public int? Volts { get; init; }

    /// <summary>Nameplate load in volt-amperes; null follows the equipment table.</summary>
    public Power? LoadVa { get; init; }

    /// <summary>Nameplate minimum circuit ampacity, in amperes.</summary>
    public Current? MinimumCircuitAmpacityA { get; init; }

    /// <summary>Nameplate maximum overcurrent device, in amperes.</summary>
    public Current? MaximumOvercurrentDeviceA { get; init; }

    /// <summary>How it is connected; null follows the equipment table.</summary>
    public Connection? Connection { get; init; }

    /// <summary>Whether a circuit of its own is wanted; null follows the equipment table.</summary>
    public bool? OwnCircuit { get; init; }

    /// <summary>Whether it burns fuel: then carbon monoxide alarms may be asked for.</summary>
    public bool BurnsFuel { get; init; }

    /// <summary>Whether it is driven by an inverter, as mini-splits are; a dated excuse of an edition turns on it.</summary>
    public bool Inverter { get; init; }

    /// <summary>How it is cut off for service, where it is hard-wired; null when not stated.</summary>
    public DisconnectPlace? Disconnect { get; init; }

    /// <summary>Whether it is there already and wired.</summary>
    public bool Existing { get; init; }

    /// <summary>Whether the owner supplies it. Equipment itself is never sold by the estimate; this mutes the reminder.</summary>
    public bool OwnerSupplied { get; init; } = true;
}
