using Estimator.Engine;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Documents.House;

/// <summary>A run in words.</summary>
public static class RunWords
{
    /// <summary>From where to where, by rooms: "office to bedroom", "panel to office", "within office".</summary>
    public static string Ends(JobEstimate estimate, Run run)
    {
        var to = Room(estimate, run.To);
        if (run.From < 0)
        {
            return $"panel to {to}";
        }

        var from = Room(estimate, run.From);
        return from == to ? $"within {to}" : $"{from} to {to}";
    }

    /// <summary>The cable: "12/2+G", with its method where it is none of the usual.</summary>
    public static string Cable(CableType cable) => cable.Method switch
    {
        WiringMethod.NmB => $"{cable.TradeName}+G",
        WiringMethod.Mc => $"{cable.TradeName}+G MC",
        WiringMethod.Uf => $"{cable.TradeName}+G UF",
        WiringMethod.Emt => $"{cable.TradeName} in EMT",
        WiringMethod.BuriedConduit => $"{cable.TradeName} in buried conduit",
        _ => throw new ArgumentOutOfRangeException(nameof(cable), cable.Method, "No such method."),
    };

    /// <summary>How it goes.</summary>
    public static string Way(Run run) => Way(run.Path, run.Fished);

    /// <summary>How a path goes.</summary>
    /// <param name="path">The path.</param>
    /// <param name="fished">Whether it is fished through finished walls.</param>
    public static string Way(RunPath path, bool fished) => (path.Way switch
    {
        RunWay.AlongWalls => "along walls through bored studs",
        RunWay.Overhead => "up, over the ceiling, down",
        RunWay.Underfloor => "down, under the floor, up",
        RunWay.Underground => "out, through the trench, in",
        _ => throw new ArgumentOutOfRangeException(nameof(path), path.Way, "No such way."),
    }) + (fished ? ", fished" : "") + (path.Bridged ? "; no way through the framing was found, measured straight across" : "");

    /// <summary>What it carries.</summary>
    public static string Role(RunRole role) => role switch
    {
        RunRole.HomeRun => "home run",
        RunRole.Feed => "feed",
        RunRole.Travellers => "travellers",
        RunRole.SwitchedLeg => "switched leg",
        RunRole.SwitchLoop => "switch loop",
        RunRole.Interconnect => "alarm interconnection",
        _ => throw new ArgumentOutOfRangeException(nameof(role), role, "No such role."),
    };

    private static string Room(JobEstimate estimate, int box) => PlaceWords.Room(estimate.House.Rooms[estimate.Wiring.Boxes[box].Place.Room]);
}
