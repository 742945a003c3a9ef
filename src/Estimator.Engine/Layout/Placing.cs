using Estimator.Engine.Explanations;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Layout;

/// <summary>Makes places on walls, ceilings and floors, with the figures that they follow from.</summary>
internal sealed class Placing(FramedHouse house, PageWriter page)
{
    internal FramedHouse House => house;

    internal PageWriter Page => page;

    /// <summary>A place on a wall.</summary>
    internal Placement OnWall(int room, int side, int offset, Fact height, bool assumed)
    {
        var framed = house.Rooms[room];
        var (a, b) = (framed.CornerFacts[side], framed.CornerFacts[(side + 1) % framed.Corners.Length]);
        var (along, whole) = (page.Constant("Sixteenths along the wall", offset), page.Constant("Sixteenths of the wall", WallSpots.LengthOf(framed, side)));
        return new Placement
        {
            Room = room,
            Level = framed.Level,
            Mount = Mount.Wall,
            Side = side,
            Offset = offset,
            Spot = WallSpots.PointAt(framed, side, offset),
            Height = height.AsLength().Value.ToSixteenths(),
            X = page.Compute(Operation.PartWay, "spot-on-wall", "Spot on the wall", Unit.Length, a.X, b.X, along, whole),
            Y = page.Compute(Operation.PartWay, "spot-on-wall", "Spot on the wall", Unit.Length, a.Y, b.Y, along, whole),
            HeightFact = height,
            Assumed = assumed,
        };
    }

    /// <summary>A place on the ceiling where it meets a wall.</summary>
    internal Placement OnCeilingAtWall(int room, int side, int offset)
    {
        var ceiling = house.Rooms[room].CeilingHeight;
        return OnWall(room, side, offset, ceiling, assumed: false) with { Mount = Mount.Ceiling, Side = -1, Offset = 0 };
    }

    /// <summary>A place on a wall, along the outline from its first corner.</summary>
    internal Placement Along(int room, int along, Fact height, bool assumed)
    {
        var (side, offset) = WallSpaces.SpotAt(house.Rooms[room], along);
        return OnWall(room, side, offset, height, assumed);
    }

    /// <summary>A place on the ceiling, or with a height free in the room.</summary>
    internal Placement Inside(int room, PlanPoint spot, Fact? height, bool assumed)
    {
        var framed = house.Rooms[room];
        var grid = house.Pose.ToGrid(spot);
        return new Placement
        {
            Room = room,
            Level = framed.Level,
            Mount = height is null ? Mount.Ceiling : Mount.Wall,
            Side = -1,
            Offset = 0,
            Spot = spot,
            Height = (height ?? framed.CeilingHeight).AsLength().Value.ToSixteenths(),
            X = Share(framed, grid.X, f => f.X),
            Y = Share(framed, grid.Y, f => f.Y),
            HeightFact = height ?? framed.CeilingHeight,
            Assumed = assumed,
        };
    }

    /// <summary>The place of something that the user put near a wall: on the nearest one.</summary>
    internal Placement NearestWall(int room, GridPoint at, Fact height)
    {
        var (side, offset) = WallSpots.Nearest(house.Rooms[room], Canonical(at));
        return OnWall(room, side, offset, height, assumed: false);
    }

    /// <summary>The place of something that the user put free in the room: on the ceiling, or at a height in an island.</summary>
    internal Placement Free(int room, GridPoint at, string path, Fact? height)
    {
        var place = Inside(room, Canonical(at), height, assumed: false);
        return place with
        {
            X = page.Given($"{path}.at[0]", "As placed", Length.FromSixteenths(at.X.ToSixteenths())),
            Y = page.Given($"{path}.at[1]", "As placed", Length.FromSixteenths(at.Y.ToSixteenths())),
        };
    }

    private PlanPoint Canonical(GridPoint at) => house.Pose.ToCanonical(new PlanPoint(at.X.ToSixteenths(), at.Y.ToSixteenths()));

    private Fact Share(FramedRoom room, int grid, Func<(Fact X, Fact Y), Fact> axis)
    {
        var ordered = room.CornerFacts.Select(axis).OrderBy(f => f.Value).ToList();
        var (low, high) = (ordered[0], ordered[^1]);
        var (from, to) = (low.AsLength().Value.ToSixteenths(), high.AsLength().Value.ToSixteenths());
        return page.Compute(
            Operation.PartWay, "spot-in-room", "Spot in the room", Unit.Length, low, high,
            page.Constant("Sixteenths from the near wall", grid - from), page.Constant("Sixteenths across the room", to - from));
    }
}
