using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Boxes;

/// <summary>Puts devices into boxes: switches that stand together share one, everything else has its own.</summary>
internal static class BoxForming
{
    internal static ImmutableArray<DraftBox> Form(HouseLayout layout)
    {
        var boxes = ImmutableArray.CreateBuilder<DraftBox>();
        foreach (var devices in Together(layout))
        {
            boxes.Add(OfDevices(layout, boxes.Count, devices));
        }

        for (var e = 0; e < layout.Equipment.Length; e++)
        {
            var equipment = layout.Equipment[e];
            boxes.Add(new DraftBox(
                boxes.Count, equipment.Source.Id, equipment.Place, [], e, UseOf(layout, equipment), OldWork(layout, equipment.Place), Gangs: 1, Metal(layout, equipment.Place)));
        }

        return boxes.ToImmutable();
    }

    private static IEnumerable<ImmutableArray<int>> Together(HouseLayout layout)
    {
        var reach = WiringSettings.GangReach.Inches().ToSixteenths();
        var mostGangs = (int)WiringSettings.MostGangs.Number();
        var open = new List<int>();
        var order = Enumerable.Range(0, layout.Devices.Length)
            .OrderBy(d => layout.Devices[d].Place.Room).ThenBy(d => layout.Devices[d].Place.Side)
            .ThenBy(d => layout.Devices[d].Place.Offset).ThenBy(d => layout.Devices[d].Place.Height).ThenBy(d => d);
        foreach (var d in order)
        {
            if (open.Count > 0 && (open.Count == mostGangs || !Joins(layout.Devices[open[^1]], layout.Devices[d], reach)))
            {
                yield return [.. open.Order()];
                open.Clear();
            }

            open.Add(d);
        }

        if (open.Count > 0)
        {
            yield return [.. open.Order()];
        }
    }

    private static bool Joins(LaidDevice a, LaidDevice b, int reach) =>
        a.Kind.IsSwitch() && b.Kind.IsSwitch() && a.Place.Mount is Mount.Wall && b.Place.Mount is Mount.Wall
        && a.Place.Room == b.Place.Room && a.Place.Side == b.Place.Side
        && b.Place.Offset - a.Place.Offset <= reach && Math.Abs(a.Place.Height - b.Place.Height) <= reach;

    private static DraftBox OfDevices(HouseLayout layout, int index, ImmutableArray<int> devices)
    {
        var first = layout.Devices[devices[0]];
        // The box stands where its first device along the wall does, in whatever order devices are listed.
        var place = devices.Select(d => layout.Devices[d].Place).MinBy(p => (p.Offset, p.Height))!;
        return new DraftBox(
            index, first.Id, place, devices, -1, UseOf(layout, first), OldWork(layout, first.Place), devices.Length, Metal(layout, first.Place));
    }

    private static BoxUse UseOf(HouseLayout layout, LaidDevice device) => device.Kind switch
    {
        DeviceKind.RecessedLight or DeviceKind.ExhaustFan => BoxUse.OwnHousing,
        DeviceKind.CeilingFan => BoxUse.Fan,
        DeviceKind.CeilingLight when FanBoxes.AskedFor(layout.House.Job.Code, layout.House.Rooms[device.Place.Room].Source.Kind) && device.Place.Mount is Mount.Ceiling => BoxUse.Fan,
        DeviceKind.Receptacle240V => BoxUse.Appliance,
        _ when IsOutdoors(layout, device) => BoxUse.Weatherproof,
        DeviceKind.CeilingLight or DeviceKind.WallLight or DeviceKind.SmokeAlarm or DeviceKind.CoAlarm or DeviceKind.SmokeCoAlarm => BoxUse.Luminaire,
        _ => BoxUse.Wall,
    };

    // An appliance by cord and plug outdoors has the box and cover of any receptacle there.
    private static BoxUse UseOf(HouseLayout layout, LaidEquipment equipment) => equipment.Connection is Connection.Receptacle
        && equipment.Volts.Value <= CircuitRatings.Volts.Number() && layout.House.Rooms[equipment.Place.Room].Source.Kind is RoomKind.Outdoors
            ? BoxUse.Weatherproof
            : BoxUse.Appliance;

    private static bool IsOutdoors(HouseLayout layout, LaidDevice device) =>
        device.Serves is ServedPlace.Outdoors || layout.House.Rooms[device.Place.Room].Source.Kind is RoomKind.Outdoors;

    private static bool Metal(HouseLayout layout, Placement place) =>
        RunMethods.TakesMetalBoxes(RunMethods.In(layout.House.Job, layout.House.Rooms[place.Room].Source));

    private static bool OldWork(HouseLayout layout, Placement place) =>
        layout.House.Rooms[place.Room].Source.Walls is WallState.Finished;
}
