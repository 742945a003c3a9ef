using System.Collections.Immutable;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Layout;

/// <summary>Whether a spot lies within a distance of the edge of a tub or shower of its room, of which only the middle is known.</summary>
/// <remarks>A tub lies one way or the other: nearer than its short side allows is surely within, farther than its corners reach is surely not. Source: the usual sizes of the table.</remarks>
internal static class TubZone
{
    /// <summary>True and false where it is sure, null where it takes a tape.</summary>
    internal static bool? Within(FramedHouse house, int room, PlanPoint spot, int reach)
    {
        bool? worst = false;
        foreach (var (kind, middle) in Of(house, room))
        {
            var (half, whole) = (PlacingLimits.ShortSide(kind).Inches().ToSixteenths() / 2, PlacingLimits.LongSide(kind).Inches().ToSixteenths() / 2);
            var away = spot.StraightDistanceTo(middle);
            if (away <= half + reach)
            {
                return true;
            }

            worst = away <= Roots.FloorOf((long)half * half + (long)whole * whole) + reach ? null : worst;
        }

        return worst;
    }

    /// <summary>Tubs and showers of a room whose place is known.</summary>
    internal static ImmutableArray<(FixtureKind Kind, PlanPoint At)> Of(FramedHouse house, int room) => [.. house.Rooms[room].Source.Fixtures
        .Where(f => f.Kind is FixtureKind.Bathtub or FixtureKind.Shower && f.At is not null).Select(f => (f.Kind, Canonical(house, f.At!.Value)))];

    /// <summary>Basins of a room whose place is known.</summary>
    internal static ImmutableArray<PlanPoint> Basins(FramedHouse house, int room) =>
        [.. house.Rooms[room].Source.Fixtures.Where(f => f.Kind is FixtureKind.Sink && f.At is not null).Select(f => Canonical(house, f.At!.Value)).Order()];

    /// <summary>Spots along the unbroken walls of a room from which a basin is in reach.</summary>
    internal static IEnumerable<(int Side, int Offset)> Near(FramedHouse house, int room, PlanPoint basin)
    {
        var framed = house.Rooms[room];
        var reach = (ReceptacleRules.BasinReach.Inches() + PlacingLimits.BasinHalf.Inches()).ToSixteenths();
        return AlongWalls(house, room).Where(s => WallSpots.PointAt(framed, s.Side, s.Offset).StraightDistanceTo(basin) <= reach);
    }

    /// <summary>Spots along the unbroken walls of a room.</summary>
    internal static IEnumerable<(int Side, int Offset)> AlongWalls(FramedHouse house, int room)
    {
        var step = PracticeDefaults.SwitchFromJamb.Inches().ToSixteenths();
        return WallSpaces.Of(house, room).SelectMany(s => Enumerable.Range(0, s.Length / step + 1).Select(i => WallSpaces.SpotAt(house.Rooms[room], s.From + i * step)));
    }

    private static PlanPoint Canonical(FramedHouse house, GridPoint at) => house.Pose.ToCanonical(new PlanPoint(at.X.ToSixteenths(), at.Y.ToSixteenths()));
}
