using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Circuits;

namespace Estimator.Engine.Checks;

/// <summary>The required circuits feed nothing else, and the counters of a kitchen hang on two of them.</summary>
/// <remarks>Source: NEC 210.52(B)(2) and (3), 210.11(C)(2) to (4).</remarks>
internal static class RequiredCircuitOutlets
{
    internal static IEnumerable<Finding> Judge(CheckContext context) => context.Wiring.Circuits.SelectMany(c => Others(context, c)).Concat(Counters(context));

    private static IEnumerable<Finding> Others(CheckContext context, Circuit circuit)
    {
        if (KeyOf(circuit.Kind) is not { } key || context.Rule(key) is not { } rule)
        {
            return [];
        }

        var boxes = circuit.Boxes.Select(b => context.Boxes[b]).ToList();
        var alone = circuit.Kind is CircuitKind.Bathroom && boxes.Select(b => b.Place.Room).Distinct().Count() == 1;
        var others = alone ? [] : boxes.Where(b => !Belongs(context, circuit.Kind, b)).ToList();
        return context.Ask(
            rule, others.Count == 0,
            () => $"Circuit {circuit.Name} also feeds {string.Join(", ", others.Take(3).Select(b => context.Called(b)))}{(others.Count > 3 ? $" and {others.Count - 3} more" : "")}; it may have no other outlets. Give those another circuit.",
            [circuit.Id, .. others.Select(b => b.Id)]);
    }

    private static string? KeyOf(CircuitKind kind) => kind switch
    {
        CircuitKind.SmallAppliance => "small-appliance-alone",
        CircuitKind.Laundry => "laundry-alone",
        CircuitKind.Bathroom => "bathroom-alone",
        CircuitKind.Garage => "garage-alone",
        _ => null,
    };

    private static bool Belongs(CheckContext context, CircuitKind kind, Box box)
    {
        var room = context.House.Rooms[box.Place.Room].Source.Kind;
        if (box.Equipment >= 0)
        {
            return kind is CircuitKind.SmallAppliance && context.Layout.Equipment[box.Equipment].Source.Kind is EquipmentKind.Refrigerator;
        }

        return box.Devices.All(d => context.Layout.Devices[d] is var device && device.Kind.IsReceptacle() && kind switch
        {
            CircuitKind.SmallAppliance => room is RoomKind.Kitchen or RoomKind.Dining or RoomKind.Storage && device.Serves is not ServedPlace.Outdoors,
            CircuitKind.Laundry => room is RoomKind.Laundry,
            CircuitKind.Bathroom => room is RoomKind.Bathroom,
            _ => room is RoomKind.Garage or RoomKind.Outdoors || device.Serves is ServedPlace.Outdoors,
        });
    }

    private static IEnumerable<Finding> Counters(CheckContext context)
    {
        if (context.Rule("counter-circuits") is not { } rule)
        {
            yield break;
        }

        foreach (var kitchen in context.House.Rooms.Where(r => r.Source.Kind is RoomKind.Kitchen))
        {
            var counters = context.Boxes.Where(b => b.Place.Room == kitchen.Index && b.Devices.Any(d => context.Layout.Devices[d] is { Serves: ServedPlace.Counter } device && device.Kind.IsReceptacle())).ToList();
            var circuits = counters.Select(b => b.Circuit).Where(c => context.Wiring.Circuits[c].Kind is CircuitKind.SmallAppliance).Distinct().Count();
            if (counters.Count == 0)
            {
                continue;
            }

            foreach (var finding in context.Ask(
                rule, circuits >= Math.Min(counters.Count, (int)WiringSettings.SmallApplianceCircuits.Number()),
                () => $"The counter receptacles of {context.RoomName(kitchen.Index)} hang on {circuits} small-appliance circuit; two are asked for. Divide them.", [kitchen.Source.Id]))
            {
                yield return finding;
            }
        }
    }
}
