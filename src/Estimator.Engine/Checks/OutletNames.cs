using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>What a finding calls a device: its kind, its number or id, and its room.</summary>
internal static class OutletNames
{
    internal static string Of(LaidDevice device, Room room)
    {
        var serves = device.Serves is ServedPlace.Room ? "" : $", {Words.Snake(device.Serves)}";
        var counted = device.Id.StartsWith($"{room.Id}/", StringComparison.Ordinal);
        return $"{Kind(device.Kind)}{serves} {(counted ? device.Id[(device.Id.LastIndexOf('-') + 1)..] : device.Id)} in {room.Called()}";
    }

    /// <summary>As a sentence begins.</summary>
    internal static string AtStart(string name) => char.ToUpperInvariant(name[0]) + name[1..];

    private static string Kind(DeviceKind kind) => kind switch
    {
        DeviceKind.GfciReceptacle => "GFCI receptacle",
        DeviceKind.Receptacle240V => "240 V receptacle",
        DeviceKind.CoAlarm => "CO alarm",
        DeviceKind.SmokeCoAlarm => "smoke and CO alarm",
        _ => Words.Snake(kind).Replace('_', ' '),
    };
}
