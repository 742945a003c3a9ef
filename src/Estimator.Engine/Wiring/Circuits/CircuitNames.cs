using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Panels;
using Estimator.Engine.Wiring.Boxes;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>What the panel directory says of a circuit: its kind and its rooms, never who lives there.</summary>
/// <remarks>Source: NEC 408.4(A).</remarks>
internal static class CircuitNames
{
    private const int RoomsNamed = 3;

    internal static string Of(HouseLayout layout, ImmutableArray<DraftBox> drafts, DraftCircuit circuit, ImmutableArray<int> boxes)
    {
        if (circuit.Group.Kind is CircuitKind.Individual && drafts[boxes[0]].Equipment is >= 0 and var equipment)
        {
            var source = layout.Equipment[equipment].Source;
            return source.Name.Length > 0 ? source.Name : Words(source.Kind.ToString());
        }

        var rooms = boxes.Select(b => PlaceOf(layout, drafts[b])).Distinct().ToList();
        var more = rooms.Count > RoomsNamed ? $" and {rooms.Count - RoomsNamed} more" : "";
        return $"{KindWords(circuit.Group.Kind)}: {string.Join(", ", rooms.Take(RoomsNamed))}{more}";
    }

    // What hangs outside is looked for outside, whatever room its wall belongs to.
    private static string PlaceOf(HouseLayout layout, DraftBox box) => box.Devices.Any(d => layout.Devices[d].Serves is ServedPlace.Outdoors)
        ? "Outside"
        : layout.House.Rooms[box.Place.Room].Source.Called();

    internal static string KindWords(CircuitKind kind) => kind switch
    {
        CircuitKind.SmallAppliance => "Small-appliance receptacles",
        CircuitKind.Laundry => "Laundry receptacles",
        CircuitKind.Bathroom => "Bathroom receptacles",
        CircuitKind.Garage => "Garage receptacles",
        CircuitKind.Individual => "240 V receptacle",
        CircuitKind.Receptacles => "Receptacles",
        CircuitKind.Lighting => "Lighting",
        CircuitKind.General => "Lights and receptacles",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind of circuit."),
    };

    private static string Words(string pascal) =>
        string.Concat(pascal.Select((c, i) => i > 0 && char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : c.ToString()));
}
