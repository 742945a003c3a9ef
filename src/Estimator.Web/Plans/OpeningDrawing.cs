using System.Collections.Immutable;
using Estimator.Engine.Framing;
using Estimator.Engine.House;

namespace Estimator.Web.Plans;

/// <summary>Draws openings in the walls that they break.</summary>
/// <remarks>
/// No job states how a door swings. It is drawn as switches are placed: latch on the side with more free wall, into the room that is no way to others.
/// Source: common practice, no source.
/// </remarks>
internal static class OpeningDrawing
{
    private const double Sixteenths = 192;
    private const double PastTheWall = 0.04;
    private const double PaneApart = 0.14;

    internal static ImmutableArray<DrawnOpening> Of(FramedHouse house, int level, SheetFrame frame) =>
        [.. house.Openings.Where(o => house.Rooms[o.Room].Level == level && house.Rooms[o.Room].Source.Id == o.Source.Room).Select(o => Draw(house, o, frame))];

    private static DrawnOpening Draw(FramedHouse house, FramedOpening opening, SheetFrame frame)
    {
        var room = house.Rooms[opening.Room];
        var outward = WallDrawing.Outward(room, opening.Side, frame);
        var (from, to) = (frame.Point(WallSpots.PointAt(room, opening.Side, opening.From)), frame.Point(WallSpots.PointAt(room, opening.Side, opening.To)));
        var wall = Thickness(house, opening);
        var shared = Math.Max(0, WallDrawing.SharedThickness - wall) / 2;
        var (inner, outer) = (-shared - PastTheWall, wall + shared + PastTheWall);
        ImmutableArray<SheetPoint> gap = [from.Along(outward, inner), to.Along(outward, inner), to.Along(outward, outer), from.Along(outward, outer)];
        var (middleFrom, middleTo) = (from.Along(outward, wall / 2), to.Along(outward, wall / 2));
        return opening.Source.Kind switch
        {
            OpeningKind.Door or OpeningKind.EntranceDoor => Hinged(house, opening, frame, gap, middleFrom, middleTo, outward),
            OpeningKind.Window => new(opening.Source.Id, opening.Source.Kind, gap, Lines((from, to), (middleFrom, middleTo), (from.Along(outward, wall), to.Along(outward, wall))), "", false),
            OpeningKind.SlidingDoor => new(
                opening.Source.Id, opening.Source.Kind, gap,
                Lines(
                    (middleFrom.Along(outward, -PaneApart / 2), middleFrom.Middle(middleTo).Along(outward, -PaneApart / 2)),
                    (middleFrom.Middle(middleTo).Along(outward, PaneApart / 2), middleTo.Along(outward, PaneApart / 2))), "", false),
            OpeningKind.VehicleDoor => new(
                opening.Source.Id, opening.Source.Kind, gap, Lines((middleFrom.Along(outward, -PaneApart / 2), middleTo.Along(outward, -PaneApart / 2)), (middleFrom.Along(outward, PaneApart / 2), middleTo.Along(outward, PaneApart / 2))), "", false),
            OpeningKind.WideOpening => new(opening.Source.Id, opening.Source.Kind, gap, Lines((middleFrom, middleTo)), "", true),
            _ => throw new ArgumentOutOfRangeException(nameof(opening), opening.Source.Kind, "No such opening."),
        };
    }

    private static DrawnOpening Hinged(
        FramedHouse house, FramedOpening opening, SheetFrame frame, ImmutableArray<SheetPoint> gap, SheetPoint from, SheetPoint to, SheetPoint outward)
    {
        var away = IsWay(house.Rooms[opening.Room].Source.Kind) && opening.OtherRoom >= 0 && !IsWay(house.Rooms[opening.OtherRoom].Source.Kind);
        var swing = away ? outward : new SheetPoint(-outward.X, -outward.Y);
        var (hinge, latch) = LatchLast(house, opening) ? (from, to) : (to, from);
        var width = hinge.DistanceTo(latch);
        var open = hinge.Along(swing, width);
        // The arc goes the short way from the latch to the open leaf: clockwise where the leaf lies to the right of the closed door.
        var clockwise = (latch.X - hinge.X) * (open.Y - hinge.Y) - (latch.Y - hinge.Y) * (open.X - hinge.X) > 0;
        var arc = $"M{PathText.Of(latch.X)} {PathText.Of(latch.Y)}A{PathText.Of(width)} {PathText.Of(width)} 0 0 {(clockwise ? 1 : 0)} {PathText.Of(open.X)} {PathText.Of(open.Y)}";
        return new DrawnOpening(opening.Source.Id, opening.Source.Kind, gap, Lines((hinge, open)), arc, false);
    }

    private static bool IsWay(RoomKind kind) => kind is RoomKind.Hall or RoomKind.Foyer or RoomKind.Stair or RoomKind.Closet or RoomKind.Storage or RoomKind.Outdoors;

    // The rule by which switches find the latch side: more wall that is free up to the next opening or the corner.
    private static bool LatchLast(FramedHouse house, FramedOpening door)
    {
        var others = house.Openings.Where(o => o.Room == door.Room && o.Side == door.Side && !ReferenceEquals(o, door)).ToList();
        var before = door.From - others.Where(o => o.To <= door.From).Select(o => o.To).DefaultIfEmpty(0).Max();
        var after = others.Where(o => o.From >= door.To).Select(o => o.From).DefaultIfEmpty(WallSpots.LengthOf(house.Rooms[door.Room], door.Side)).Min() - door.To;
        return after >= before;
    }

    private static double Thickness(FramedHouse house, FramedOpening opening)
    {
        if (opening.OtherRoom < 0 || house.Rooms[opening.OtherRoom].Source.Kind is RoomKind.Outdoors)
        {
            return WallDrawing.OuterThickness;
        }

        var middle = WallSpots.PointAt(house.Rooms[opening.Room], opening.Side, (opening.From + opening.To) / 2);
        var other = house.Rooms[opening.OtherRoom];
        var (side, offset) = WallSpots.Nearest(other, middle);
        return Math.Min(WallSpots.PointAt(other, side, offset).StraightDistanceTo(middle), WallDrawing.Thickest(house)) / Sixteenths;
    }

    private static ImmutableArray<ImmutableArray<SheetPoint>> Lines(params ReadOnlySpan<(SheetPoint From, SheetPoint To)> lines)
    {
        var drawn = ImmutableArray.CreateBuilder<ImmutableArray<SheetPoint>>();
        foreach (var (from, to) in lines)
        {
            drawn.Add([from, to]);
        }

        return drawn.ToImmutable();
    }
}
