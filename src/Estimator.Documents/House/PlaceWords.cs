using System.Globalization;
using System.Text.RegularExpressions;
using Estimator.Engine;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Documents.House;

/// <summary>Says where things are in the words of the people who stand there.</summary>
internal static partial class PlaceWords
{
    /// <summary>The room's name; its id where it has none.</summary>
    internal static string Room(FramedRoom room) => room.Source.Called();

    /// <summary>The panel's name; its id where it has none.</summary>
    internal static string Panel(JobEstimate estimate, int panel) => estimate.Layout.Panels[panel].Source.Called();

    /// <summary>A panel as a title: the word stands in front where its name does not say it.</summary>
    internal static string Titled(Panel panel) => panel.Called().Contains("panel", StringComparison.OrdinalIgnoreCase) ? panel.Called() : $"Panel {panel.Called()}";

    /// <summary>The name of a panel by its id.</summary>
    internal static string Panel(JobEstimate estimate, string id) => estimate.Layout.Panels.First(p => p.Source.Id == id).Source.Called();

    /// <summary>What a box serves, and its room.</summary>
    internal static string Box(JobEstimate estimate, int index)
    {
        var box = estimate.Wiring.Boxes[index];
        var serves = box.Equipment >= 0 ? [Equipment(estimate, box.Equipment)] : box.Devices.Select(d => Device(estimate.Layout.Devices[d].Kind)).Distinct();
        return $"{Room(estimate.House.Rooms[box.Place.Room])}: {string.Join(", ", serves)}";
    }

    /// <summary>Where a run leaves.</summary>
    internal static string From(JobEstimate estimate, Run run) =>
        run.From < 0 ? Panel(estimate, estimate.Wiring.Circuits[run.Circuit].Panel) : Box(estimate, run.From);

    /// <summary>The name of a piece of equipment; its kind where it has none.</summary>
    internal static string Equipment(JobEstimate estimate, int index)
    {
        var source = estimate.Layout.Equipment[index].Source;
        return source.Name.Length > 0 ? source.Name : Kind(source.Kind);
    }

    /// <summary>A word of ours for people: HomeRun is home run.</summary>
    internal static string Kind<T>(T kind)
        where T : struct, Enum => Borders().Replace(kind.ToString(), " ").ToLowerInvariant();

    /// <summary>So many devices of a kind.</summary>
    internal static string Devices(DeviceKind kind, int count)
    {
        var one = Device(kind);
        return string.Create(CultureInfo.InvariantCulture, $"{count} {one}{(count == 1 ? "" : one.EndsWith("ch", StringComparison.Ordinal) ? "es" : "s")}");
    }

    /// <summary>A device by its trade name.</summary>
    internal static string Device(DeviceKind kind) => kind switch
    {
        DeviceKind.GfciReceptacle => "GFCI receptacle",
        DeviceKind.HalfHotReceptacle => "half-hot receptacle",
        DeviceKind.Receptacle240V => "240 V receptacle",
        DeviceKind.SinglePoleSwitch => "single-pole switch",
        DeviceKind.ThreeWaySwitch => "three-way switch",
        DeviceKind.FourWaySwitch => "four-way switch",
        DeviceKind.CoAlarm => "carbon monoxide alarm",
        DeviceKind.SmokeCoAlarm => "smoke and carbon monoxide alarm",
        _ => Kind(kind),
    };

    [GeneratedRegex("(?<=[a-z0-9])(?=[A-Z])", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Borders();
}
