using System.Text.Json.Serialization;

namespace Estimator.Engine.House;

/// <summary>What is put in or on a box.</summary>
public enum DeviceKind
{
    /// <summary>Duplex receptacle, 125 V.</summary>
    DuplexReceptacle = 1,

    /// <summary>Receptacle with ground-fault protection built in.</summary>
    GfciReceptacle,

    /// <summary>Duplex receptacle with one half switched.</summary>
    HalfHotReceptacle,

    /// <summary>240 V receptacle for an appliance.</summary>
    [JsonStringEnumMemberName("receptacle_240v")]
    Receptacle240V,

    /// <summary>Single-pole switch.</summary>
    SinglePoleSwitch,

    /// <summary>Three-way switch.</summary>
    ThreeWaySwitch,

    /// <summary>Four-way switch.</summary>
    FourWaySwitch,

    /// <summary>Dimmer, single-pole.</summary>
    Dimmer,

    /// <summary>Occupancy or vacancy sensor switch.</summary>
    SensorSwitch,

    /// <summary>Ceiling luminaire on a box.</summary>
    CeilingLight,

    /// <summary>Recessed luminaire with its own wiring box.</summary>
    RecessedLight,

    /// <summary>Wall luminaire on a box.</summary>
    WallLight,

    /// <summary>Ceiling fan with a light, each under its own control.</summary>
    CeilingFan,

    /// <summary>Exhaust fan.</summary>
    ExhaustFan,

    /// <summary>Smoke alarm, interconnected.</summary>
    SmokeAlarm,

    /// <summary>Carbon monoxide alarm, interconnected.</summary>
    CoAlarm,

    /// <summary>Combined smoke and carbon monoxide alarm, interconnected.</summary>
    SmokeCoAlarm,
}
