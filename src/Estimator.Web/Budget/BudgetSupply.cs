using System.Collections.Immutable;
using Estimator.Engine.House;

namespace Estimator.Web.Budget;

/// <summary>Equipment that a homeowner may want, each on a supply of its own.</summary>
/// <param name="Kind">What.</param>
/// <param name="Title">In plain words.</param>
/// <param name="Hint">What to know about it.</param>
public sealed record BudgetSupply(EquipmentKind Kind, string Title, string Hint)
{
    /// <summary>All that are offered.</summary>
    public static ImmutableArray<BudgetSupply> All { get; } =
    [
        new(EquipmentKind.ElectricHeat, "An electric heater on the wall", "stands in the bath where there is one"),
        new(EquipmentKind.SumpPump, "A sump pump", "a circuit that nothing else can trip"),
        new(EquipmentKind.Refrigerator, "A refrigerator or freezer", ""),
        new(EquipmentKind.Dryer, "An electric clothes dryer", "240 volts"),
        new(EquipmentKind.EvCharger, "A charger for a car", "a large load: the service may have to be judged first"),
    ];

    /// <summary>The room that it is put in: the first that suits it, else where the panel hangs.</summary>
    public static string RoomFor(EquipmentKind kind, ImmutableArray<BudgetRoom> rooms, string panelRoom)
    {
        RoomKind? wanted = kind switch
        {
            EquipmentKind.ElectricHeat => RoomKind.Bathroom,
            EquipmentKind.Dryer => RoomKind.Laundry,
            EquipmentKind.Refrigerator => RoomKind.Kitchen,
            _ => null,
        };
        return rooms.FirstOrDefault(r => r.Kind == wanted)?.Id ?? panelRoom;
    }
}
