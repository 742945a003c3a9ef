using Estimator.Documents.House;
using Estimator.Engine;
using Estimator.Engine.House;

namespace Estimator.Documents.Crew;

/// <summary>A device or a piece of equipment as the crew sets it.</summary>
/// <param name="Room">Name of the room.</param>
/// <param name="Name">What it is.</param>
/// <param name="Height">Box centre above the floor, or how it hangs.</param>
/// <param name="Box">Label of its box; empty where it has none.</param>
/// <param name="Circuit">Label of its circuit.</param>
/// <param name="Note">What is particular about it.</param>
/// <param name="Id">Its id.</param>
public sealed record SetDevice(string Room, string Name, string Height, string Box, string Circuit, string Note, string Id)
{
    /// <summary>Everything that is set, room by room.</summary>
    public static IEnumerable<SetDevice> Of(JobEstimate estimate, CrewLabels labels)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        ArgumentNullException.ThrowIfNull(labels);
        var (wiring, layout) = (estimate.Wiring, estimate.Layout);
        var boxOf = wiring.Boxes.SelectMany((b, i) => b.Devices.Select(d => (Device: d, Box: i))).DistinctBy(x => x.Device).ToDictionary(x => x.Device, x => x.Box);
        var boxOfEquipment = wiring.Boxes.Select((b, i) => (b.Equipment, Box: i)).Where(x => x.Equipment >= 0).DistinctBy(x => x.Equipment).ToDictionary(x => x.Equipment, x => x.Box);
        foreach (var room in estimate.House.Rooms)
        {
            var name = PlaceWords.Room(room);
            for (var d = 0; d < layout.Devices.Length; d++)
            {
                if (layout.Devices[d] is var device && device.Place.Room == room.Index)
                {
                    int? box = boxOf.TryGetValue(d, out var found) ? found : null;
                    var height = device.Kind.HangsFromCeiling() && device.Place.Side < 0 ? "ceiling" : device.Place.HeightFact.AsLength().Value.ToString();
                    yield return new SetDevice(name, PlaceWords.Device(device.Kind), height, Label(labels, box), CircuitOf(estimate, labels, box), string.Join(", ", Notes(estimate, d, box)), device.Id);
                }
            }

            for (var e = 0; e < layout.Equipment.Length; e++)
            {
                if (layout.Equipment[e] is var equipment && equipment.Place.Room == room.Index)
                {
                    int? box = boxOfEquipment.TryGetValue(e, out var found) ? found : null;
                    yield return new SetDevice(
                        name, PlaceWords.Equipment(estimate, e), equipment.Place.HeightFact.AsLength().Value.ToString(), Label(labels, box), CircuitOf(estimate, labels, box), PlaceWords.Kind(equipment.Connection), equipment.Source.Id);
                }
            }
        }
    }

    private static string Label(CrewLabels labels, int? box) => box is { } b ? labels.Box(b) : "";

    private static string CircuitOf(JobEstimate estimate, CrewLabels labels, int? box) => box is { } b ? labels.Circuit(estimate.Wiring.Boxes[b].Circuit) : "";

    private static IEnumerable<string> Notes(JobEstimate estimate, int device, int? box)
    {
        var laid = estimate.Layout.Devices[device];
        if (box is { } b && estimate.Wiring.Boxes[b] is var at)
        {
            if (at.OwnGroundFault || (estimate.Wiring.Circuits[at.Circuit].FirstReceptacleProtects && estimate.Wiring.Circuits[at.Circuit].Boxes.FirstOrDefault(-1) == b && laid.Kind.IsReceptacle()))
            {
                yield return "GFCI here";
            }

            if (at.OldWork)
            {
                yield return "old work";
            }
        }

        if (laid.OwnerSupplied)
        {
            yield return "the owner supplies it";
        }

        if (laid.Place.Assumed)
        {
            yield return "place assumed";
        }
    }
}
