using System.Collections.Immutable;
using Estimator.Engine.Framing;
using Estimator.Engine.Measures;
using NetTopologySuite.Geometries;

namespace Estimator.RealPlans.Tests;

/// <summary>Our geometry against NetTopologySuite on every plan.</summary>
public sealed class GeometryTests
{
    private const double SixteenthsPerFoot = 192;

    public static TheoryData<string> Names() => PlanFolder.Names();

    [Theory]
    [MemberData(nameof(Names))]
    public void Area_OfEachRoom_EqualsReferenceLibrary(string name)
    {
        foreach (var room in HouseFraming.Frame(PlanFolder.Job(name)).Rooms)
        {
            Assert.Equal(Shape(room).Area / (SixteenthsPerFoot * SixteenthsPerFoot), (double)room.AreaSquareFeet.Value, 0.000001);
            Assert.Equal(Ring(room.Corners).Length, Polygons.Perimeter(room.Corners), room.Corners.Length * 0.5);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Holds_PointsOfAGrid_EqualsReferenceLibrary(string name)
    {
        foreach (var room in HouseFraming.Frame(PlanFolder.Job(name)).Rooms)
        {
            var shape = Shape(room);
            var box = shape.EnvelopeInternal;
            for (var i = 0; i < 12; i++)
            {
                for (var j = 0; j < 12; j++)
                {
                    var p = new PlanPoint((int)(box.MinX + (i + 0.37) * box.Width / 12), (int)(box.MinY + (j + 0.61) * box.Height / 12));
                    Assert.Equal(shape.Covers(shape.Factory.CreatePoint(new Coordinate(p.X, p.Y))), Polygons.Holds(room, p));
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Facing_SidesOfTwoRooms_LieAsFarApartAsReferenceLibrarySays(string name)
    {
        var house = HouseFraming.Frame(PlanFolder.Job(name));
        var thickest = Length.FromFeet(1.3m).ToSixteenths();
        var found = 0;
        foreach (var level in house.Levels)
        {
            foreach (var (a, b) in level.Rooms.SelectMany(a => level.Rooms.Where(b => b != a).Select(b => (a, b))))
            {
                for (var side = 0; side < house.Rooms[a].Corners.Length; side++)
                {
                    foreach (var facing in Facing.Between(house, a, side, b, thickest))
                    {
                        found++;
                        var (own, theirs) = (Part(house.Rooms[a], side, facing.From, facing.To), Part(house.Rooms[b], facing.Side, facing.Map(facing.From), facing.Map(facing.To)));
                        // Whole sixteenths on both sides, and sides of a drawn plan up to half an inch out of parallel.
                        Assert.Equal(facing.Gap, own.Distance(theirs), 9d);
                        Assert.Equal(own.Length, theirs.Length, 3d);
                    }
                }
            }
        }

        Assert.True(found > 0, "no two rooms share a wall");
    }

    private static LineString Part(FramedRoom room, int side, int from, int to)
    {
        var (a, b) = (WallSpots.PointAt(room, side, from), WallSpots.PointAt(room, side, to));
        return new LineString([new Coordinate(a.X, a.Y), new Coordinate(b.X, b.Y)]);
    }

    private static Polygon Shape(FramedRoom room) => new(Ring(room.Corners), [.. room.Holes.Select(Ring)]);

    private static LinearRing Ring(ImmutableArray<PlanPoint> corners) =>
        new([.. corners.Append(corners[0]).Select(c => new Coordinate(c.X, c.Y))]);
}
