using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Controls;

/// <summary>Whether the switches of a control can do what is asked of them together.</summary>
/// <remarks>
/// One place: any switch. More: a three-way at each end and a four-way at each place between; dimmers and sensors may stand at an end where they are made for
/// it. Source: common practice, no source; the poles and throws of the devices allow nothing else.
/// </remarks>
internal static class SwitchKinds
{
    private const int Ends = 2;

    internal static IEnumerable<Finding> Misfits(HouseLayout layout, ControlGroup group)
    {
        var kinds = group.Switches.ToLookup(s => layout.Devices[s].Kind);
        if (group.Loads.IsEmpty)
        {
            yield return Of(
                layout, group, "switch-without-load", Severity.Advice, $"Control {group.Id} acts on nothing: say what its switch turns on and off, or take it out.");
        }

        if (group.Switches.Length == 1 && kinds[DeviceKind.FourWaySwitch].Any())
        {
            yield return Of(layout, group, "switch-kind", Severity.Advice, $"Control {group.Id} has one switch and it is a four-way: a single-pole switch does the same for less.");
        }

        var fourWays = kinds[DeviceKind.FourWaySwitch].Count();
        if (group.Switches.Length > 1 && (kinds[DeviceKind.SinglePoleSwitch].Any() || group.Switches.Length - fourWays != Ends))
        {
            yield return Of(
                layout, group, "switch-kind", Severity.Mandatory,
                FormattableString.Invariant($"Control {group.Id} acts from {group.Switches.Length} places: two of its switches must be three-ways and the {group.Switches.Length - Ends} between them four-ways. It has {Listed(kinds)}."));
        }

        if (group.Switches.Length > 1 && (kinds[DeviceKind.Dimmer].Any() || kinds[DeviceKind.SensorSwitch].Any()))
        {
            yield return Of(
                layout, group, "switch-kind", Severity.Note, $"Control {group.Id} acts from several places and has a dimmer or sensor among its switches: buy one that is made to work with three-ways.");
        }
    }

    private static string Listed(ILookup<DeviceKind, int> kinds) =>
        string.Join(", ", kinds.OrderBy(k => k.Key).Select(k => FormattableString.Invariant($"{k.Count()} {Words.Snake(k.Key).Replace('_', ' ')}")));

    private static Finding Of(HouseLayout layout, ControlGroup group, string code, Severity severity, string text) => new()
    {
        Code = code,
        Severity = severity,
        Where = [.. group.Switches.Select(s => layout.Devices[s].Id)],
        Text = text,
    };
}
