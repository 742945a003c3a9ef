using System.Collections.Immutable;
using Estimator.Engine;
using Estimator.Engine.Framing;
using Estimator.Engine.Layout;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Web.Jobs;
using Estimator.Web.Symbols;

namespace Estimator.Web.Plans;

/// <summary>Puts the signs of devices and equipment on the sheet: a wall sign stands with its foot on the wall, signs of one box touch.</summary>
internal static class OutletDrawing
{
    // Signs of one box stand so close that they are read as one: part of the sign's side.
    private const double GangStep = 0.62;
    private const double QuarterTurns = 180 / Math.PI;

    internal static ImmutableArray<DrawnOutlet> Of(JobEstimate estimate, int level, SheetFrame frame)
    {
        var (layout, wiring) = (estimate.Layout, estimate.Wiring);
        var boxOf = wiring.Boxes.SelectMany(b => b.Devices.Select(d => (Device: d, Box: b))).ToDictionary(p => p.Device, p => p.Box);
        var equipmentBox = wiring.Boxes.Where(b => b.Equipment >= 0).ToDictionary(b => b.Equipment, b => b);
        return
        [
            .. layout.Devices.Select((d, i) => (Device: d, Index: i)).Where(p => p.Device.Place.Level == level)
                .Select(p => Device(layout, p.Device, p.Index, boxOf.GetValueOrDefault(p.Index), frame)),
            .. layout.Equipment.Select((e, i) => (Piece: e, Index: i)).Where(p => p.Piece.Place.Level == level)
                .Select(p => Piece(layout, p.Piece, equipmentBox.GetValueOrDefault(p.Index), frame)),
        ];
    }

    private static DrawnOutlet Device(HouseLayout layout, LaidDevice device, int index, Box? box, SheetFrame frame)
    {
        var sign = DeviceSign.Of(device.Kind);
        var place = box?.Place ?? device.Place;
        var upright = sign.Shape is "S";
        var (at, turn) = Stand(layout.House, place, GangShift(box, index), frame);
        return new DrawnOutlet
        {
            Id = device.Id,
            Device = index,
            Shape = sign.Shape,
            Inside = sign.Inside,
            Below = sign.Below,
            Name = sign.Name,
            Kind = sign.Name,
            At = at,
            Spot = frame.Point(place.Spot),
            Turn = upright ? 0 : turn,
            Circuit = box?.Circuit ?? -1,
            Room = RoomActs.Name(layout.House.Rooms[device.Place.Room].Source),
            Height = device.Place.HeightFact,
            Assumed = device.Place.Assumed,
        };
    }

    private static DrawnOutlet Piece(HouseLayout layout, LaidEquipment piece, Box? box, SheetFrame frame)
    {
        var (at, turn) = Stand(layout.House, piece.Place, 0, frame);
        var sign = EquipmentSign.Of(piece.Source.Kind);
        return new DrawnOutlet
        {
            Id = piece.Source.Id,
            Device = -1,
            Shape = "",
            Inside = "",
            Below = sign.Letters,
            Name = piece.Source.Name.Length > 0 ? piece.Source.Name : sign.Name,
            Kind = sign.Name,
            At = at,
            Spot = frame.Point(piece.Place.Spot),
            Turn = turn,
            Circuit = box?.Circuit ?? -1,
            Room = RoomActs.Name(layout.House.Rooms[piece.Place.Room].Source),
            Height = piece.Place.HeightFact,
            Assumed = piece.Place.Assumed,
        };
    }

    private static (SheetPoint At, double Turn) Stand(FramedHouse house, Placement place, double shift, SheetFrame frame)
    {
        var spot = frame.Point(place.Spot);
        // What hangs from the ceiling or stands free, as in an island, has no wall to turn to.
        if (place.Mount is Mount.Ceiling || place.Side < 0)
        {
            return (new SheetPoint(spot.X + shift * frame.Sign, spot.Y), 0);
        }

        var outward = WallDrawing.Outward(house.Rooms[place.Room], place.Side, frame);
        var along = new SheetPoint(-outward.Y, outward.X);
        return (spot.Along(outward, -frame.Sign / 2).Along(along, shift * frame.Sign), Math.Atan2(-outward.X, outward.Y) * QuarterTurns);
    }

    private static double GangShift(Box? box, int device) =>
        box is null || box.Devices.Length < 2 ? 0 : (box.Devices.IndexOf(device) - (box.Devices.Length - 1) / 2.0) * GangStep;
}
