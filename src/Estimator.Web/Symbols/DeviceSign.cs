using Estimator.Engine.House;

namespace Estimator.Web.Symbols;

/// <summary>How a device is drawn on plans and grids, and what it is called there.</summary>
/// <param name="Shape">Id of the shape on the symbol sheet.</param>
/// <param name="Inside">Letters inside the shape.</param>
/// <param name="Below">Letters to the lower right.</param>
/// <param name="Short">Its name at the head of a narrow column.</param>
/// <param name="Name">Its name in a sentence.</param>
public sealed record DeviceSign(string Shape, string Inside, string Below, string Short, string Name)
{
    /// <summary>The sign of a kind.</summary>
    public static DeviceSign Of(DeviceKind kind) => kind switch
    {
        DeviceKind.DuplexReceptacle => new("REC", "", "", "Receptacle", "receptacle"),
        DeviceKind.GfciReceptacle => new("REC", "", "GFI", "GFCI", "GFCI receptacle"),
        DeviceKind.HalfHotReceptacle => new("SPL", "", "", "Half hot", "half-hot receptacle"),
        DeviceKind.Receptacle240V => new("R240", "", "", "240 V", "240 V receptacle"),
        DeviceKind.SinglePoleSwitch => new("S", "", "", "Switch", "switch"),
        DeviceKind.ThreeWaySwitch => new("S", "", "3", "3-way", "3-way switch"),
        DeviceKind.FourWaySwitch => new("S", "", "4", "4-way", "4-way switch"),
        DeviceKind.Dimmer => new("S", "", "D", "Dimmer", "dimmer"),
        DeviceKind.SensorSwitch => new("S", "", "OS", "Sensor", "sensor switch"),
        DeviceKind.CeilingLight => new("L", "", "", "Ceiling", "ceiling light"),
        DeviceKind.RecessedLight => new("LR", "R", "", "Recessed", "recessed light"),
        DeviceKind.WallLight => new("LW", "", "", "Wall", "wall light"),
        DeviceKind.CeilingFan => new("CF", "", "", "Fan light", "ceiling fan with light"),
        DeviceKind.ExhaustFan => new("EF", "F", "", "Exhaust", "exhaust fan"),
        DeviceKind.SmokeAlarm => new("SM", "SD", "", "Smoke", "smoke alarm"),
        DeviceKind.CoAlarm => new("SM", "CO", "", "CO", "carbon monoxide alarm"),
        DeviceKind.SmokeCoAlarm => new("SM", "S", "CO", "Smoke, CO", "smoke and carbon monoxide alarm"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such device."),
    };
}
