using Estimator.Documents.House;
using Estimator.Engine;
using Estimator.Engine.House;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Joints;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Documents.Boxes;

/// <summary>A box, its conductors and its screws in the words of whoever makes it up.</summary>
public static class BoxWords
{
    /// <summary>What the box holds and where.</summary>
    public static string Title(JobEstimate estimate, Box box)
    {
        var room = estimate.House.Rooms[box.Place.Room].Source.Called();
        var what = box.Equipment >= 0
            ? PlaceWords.Equipment(estimate, box.Equipment)
            : string.Join(", ", box.Devices.GroupBy(d => estimate.Layout.Devices[d].Kind).Select(g => g.Count() == 1 ? PlaceWords.Device(g.Key) : $"{g.Count()} × {PlaceWords.Device(g.Key)}"));
        return $"{room}: {what}";
    }

    /// <summary>A device or the equipment of the box.</summary>
    public static string Device(JobEstimate estimate, Box box, int device) =>
        device >= 0 ? PlaceWords.Device(estimate.Layout.Devices[device].Kind) : PlaceWords.Equipment(estimate, box.Equipment);

    /// <summary>Where a cable goes, seen from the box.</summary>
    public static string Cable(JobEstimate estimate, Run run, int box) =>
        $"{RunWords.Cable(run.Cable)} {(run.To == box ? $"from {Far(estimate, run.From)}" : $"to {Far(estimate, run.To)}")}";

    /// <summary>A screw or lead, with the colour that it has.</summary>
    public static string Terminal(Terminal terminal) => (terminal.Name switch
    {
        TerminalName.Hot => "hot",
        TerminalName.SecondHot => "second hot",
        TerminalName.SwitchedHalf => "switched half, tab broken off",
        TerminalName.FanLight => "light of the fan",
        TerminalName.SwitchFeed => "feed",
        TerminalName.SwitchLeg => "switched",
        TerminalName.Common => "common",
        TerminalName.TravellerA => "traveller 1",
        TerminalName.TravellerB => "traveller 2",
        TerminalName.OnwardA => "traveller 3",
        TerminalName.OnwardB => "traveller 4",
        TerminalName.Neutral => "neutral",
        TerminalName.Ground => "ground",
        TerminalName.Interconnect => "interconnect",
        TerminalName.LoadHot => "load, hot",
        TerminalName.LoadNeutral => "load, neutral",
        _ => throw new ArgumentOutOfRangeException(nameof(terminal), terminal.Name, "No such terminal."),
    }) + $" ({Metal(terminal)})";

    /// <summary>What the conductors of a joint are for.</summary>
    public static string Function(ConductorFunction function) => function switch
    {
        ConductorFunction.Hot => "hot",
        ConductorFunction.Switched => "switched hot",
        ConductorFunction.Traveller => "traveller",
        ConductorFunction.Neutral => "neutral",
        ConductorFunction.Ground => "ground",
        ConductorFunction.Interconnect => "interconnect",
        ConductorFunction.Spare => "spare, capped",
        _ => throw new ArgumentOutOfRangeException(nameof(function), function, "No such function."),
    };

    /// <summary>What to mind in this box.</summary>
    public static IEnumerable<string> Cautions(JobEstimate estimate, Box box)
    {
        var runs = box.Joints.SelectMany(j => j.Ends).Select(e => e.Run).Distinct().Select(r => estimate.Wiring.Runs[r]).ToList();
        var names = box.Joints.SelectMany(j => j.Terminals).Select(t => t.Name).ToHashSet();
        if (runs.Any(r => r.Conductors.Any(c => c.ReMarked)))
        {
            yield return "A white conductor is hot here: mark it black or red at both ends.";
        }

        if (runs.Any(r => r.Conductors.Any(c => c.Net.Number == 1 && c.Net.Function is ConductorFunction.Hot) && estimate.Wiring.Circuits[r.Circuit].SharesNeutralWith is not null))
        {
            yield return "Two circuits share the neutral here. Turn off both poles, splice it with a pigtail so that no device interrupts it, and keep red for the other circuit.";
        }

        if (names.Contains(TerminalName.Common))
        {
            yield return "Common is the dark screw; travellers on it make the switches fight.";
        }

        if (names.Contains(TerminalName.LoadHot))
        {
            yield return "Feed on line, what it protects on load; exchanged, the rest of the circuit is not protected.";
        }

        if (names.Contains(TerminalName.SwitchedHalf))
        {
            yield return "Break the tab between the brass screws, and leave the one between the silver screws.";
        }

        if (box.Joints.Count(j => j.Function is ConductorFunction.Neutral) > 1)
        {
            yield return "Neutrals stay in their groups: joined across, they would run in parallel.";
        }
    }

    private static string Metal(Terminal terminal) => terminal.Name switch
    {
        TerminalName.Neutral or TerminalName.LoadNeutral => terminal.Lead ? "white" : "silver",
        TerminalName.Ground => terminal.Lead ? "green or bare" : "green",
        TerminalName.Common => "dark",
        TerminalName.OnwardA or TerminalName.OnwardB => "dark",
        TerminalName.FanLight => "blue",
        TerminalName.Interconnect => "its own lead",
        _ => terminal.Lead ? "black" : "brass",
    };

    private static string Far(JobEstimate estimate, int box) => box < 0 ? "the panel" : Title(estimate, estimate.Wiring.Boxes[box]);
}
