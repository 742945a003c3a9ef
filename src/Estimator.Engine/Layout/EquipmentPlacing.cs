using Estimator.Engine.Explanations;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Layout;

/// <summary>Finds the outlet of each piece of equipment and fills from the equipment table what the user left out.</summary>
internal static class EquipmentPlacing
{
    internal static IEnumerable<LaidEquipment> Place(FramedHouse house, Placing placing)
    {
        var all = house.Job.Equipment.Select((e, i) => (Equipment: e, Index: i, Room: house.Rooms.FirstOrDefault(r => r.Source.Id == e.Room)))
            .Where(x => x.Room is not null && !x.Equipment.Existing)
            .OrderBy(x => x.Room!.Index).ThenBy(x => x.Equipment.Kind).ThenBy(x => Spot(house, x.Equipment)).ThenBy(x => x.Equipment.Id, StringComparer.Ordinal).ToList();
        foreach (var room in all.GroupBy(x => x.Room!.Index))
        {
            var free = room.Where(x => x.Equipment.At is null && x.Equipment.Wall is null).ToList();
            var spots = ReceptacleSpread.AlongWalls(house, room.Key, free.Count);
            foreach (var (equipment, index, framed) in room)
            {
                var row = EquipmentDefaults.For(equipment.Kind);
                var height = MountingHeights.Within(framed!, row.ReadInches(placing.Page, "height_in"), placing.Page);
                var place = Where(house, framed!, equipment, height, free.FindIndex(f => f.Index == index) is >= 0 and var f ? spots[f] : 0, placing);
                yield return Fill(equipment, index, row, place, placing.Page);
            }
        }
    }

    private static Placement Where(FramedHouse house, FramedRoom room, Equipment equipment, Fact height, int along, Placing placing)
    {
        if (equipment.Wall is { } wall)
        {
            var (side, offset) = WallSpots.Of(room, wall, house.Pose);
            return placing.OnWall(room.Index, side, offset, height, assumed: false);
        }

        return equipment.At is { } at
            ? placing.NearestWall(room.Index, at, height)
            : placing.Along(room.Index, along, height, assumed: true);
    }

    private static LaidEquipment Fill(Equipment equipment, int index, RuleRow row, Placement place, PageWriter page)
    {
        var path = $"$.equipment[{index}]";
        var volts = equipment.Volts is { } own ? page.Given($"{path}.volts", "Nominal supply", own, Unit.Volts) : row.Read(page, Unit.Volts, "volts");
        return new LaidEquipment
        {
            Index = index,
            Source = equipment,
            Place = place,
            Volts = volts,
            LoadVa = equipment.LoadVa is { } load ? page.Given($"{path}.load_va", "Nameplate load", load.ToVoltAmperes(), Unit.VoltAmperes)
                : equipment.MinimumCircuitAmpacityA is { } mca ? FromAmpacity(path, mca.ToAmperes(), volts, page)
                : row.Read(page, Unit.VoltAmperes, "load_va"),
            Connection = equipment.Connection ?? (row.Text("connection") == Words.Snake(Connection.Receptacle) ? Connection.Receptacle : Connection.HardWired),
            OwnCircuit = equipment.OwnCircuit ?? row.Flag("own_circuit"),
        };
    }

    private static Fact FromAmpacity(string path, decimal amperes, Fact volts, PageWriter page) => page.Compute(
        Operation.Product, "load-from-ampacity", "Load by the nameplate ampacity", Unit.VoltAmperes,
        page.Given($"{path}.minimum_circuit_ampacity_a", "Nameplate minimum circuit ampacity", amperes, Unit.Amperes), volts);

    private static Measures.PlanPoint Spot(FramedHouse house, Equipment equipment) => equipment.At is { } at
        ? house.Pose.ToCanonical(new Measures.PlanPoint(at.X.ToSixteenths(), at.Y.ToSixteenths()))
        : default;
}
