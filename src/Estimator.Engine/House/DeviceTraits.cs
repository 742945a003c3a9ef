
namespace Estimator.Engine.House;

/// <summary>What kind of thing a device is, as the stages after Layout ask it.</summary>
public static class DeviceTraits
{
    /// <summary>Whether it is a switch.</summary>
    public static bool IsSwitch(this DeviceKind kind) => kind is DeviceKind.SinglePoleSwitch or DeviceKind.ThreeWaySwitch
        or DeviceKind.FourWaySwitch or DeviceKind.Dimmer or DeviceKind.SensorSwitch;

    /// <summary>Whether it is a receptacle.</summary>
    public static bool IsReceptacle(this DeviceKind kind) => kind is DeviceKind.DuplexReceptacle or DeviceKind.GfciReceptacle
        or DeviceKind.HalfHotReceptacle or DeviceKind.Receptacle240V;

    /// <summary>Whether it is an interconnected alarm.</summary>
    public static bool IsAlarm(this DeviceKind kind) => kind is DeviceKind.SmokeAlarm or DeviceKind.CoAlarm or DeviceKind.SmokeCoAlarm;

    /// <summary>Whether it is a luminaire or fan, so that a switch may act on it.</summary>
    public static bool IsLuminaireOrFan(this DeviceKind kind) => kind is DeviceKind.CeilingLight or DeviceKind.RecessedLight
        or DeviceKind.WallLight or DeviceKind.CeilingFan or DeviceKind.ExhaustFan;

    /// <summary>Whether it hangs from the ceiling where the user says no wall.</summary>
    public static bool HangsFromCeiling(this DeviceKind kind) => kind.HangsFromCeilingAlone() || kind is DeviceKind.ExhaustFan || kind.IsAlarm();

    /// <summary>Whether it can only hang from the ceiling.</summary>
    public static bool HangsFromCeilingAlone(this DeviceKind kind) => kind is DeviceKind.CeilingLight or DeviceKind.RecessedLight or DeviceKind.CeilingFan;
}
