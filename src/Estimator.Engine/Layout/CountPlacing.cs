using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Layout;

/// <summary>Finds places for devices of which the user gave only the number.</summary>
internal sealed class CountPlacing(Placing placing)
{
    private readonly FramedHouse _house = placing.House;

    internal IEnumerable<Placement> Places(int room, DeviceKind kind, ServedPlace serves, int count)
    {
        var framed = _house.Rooms[room];
        var height = MountingHeights.Of(_house.Job, framed, kind, serves, placing.Page);
        return kind switch
        {
            _ when kind.IsSwitch() => Switches(room, kind, count, height),
            DeviceKind.CeilingLight or DeviceKind.RecessedLight => Ceiling(room, RoomPoints.Spread(framed, count)),
            DeviceKind.CeilingFan => Ceiling(room, RoomPoints.Spread(framed, count)),
            DeviceKind.ExhaustFan => Ceiling(room, [.. Enumerable.Repeat(RoomPoints.At(_house, framed, FixtureKind.Shower, FixtureKind.Bathtub, FixtureKind.Toilet), count)]),
            DeviceKind.WallLight => WallLights(room, serves, count, height),
            _ when kind.IsAlarm() => Ceiling(room, [.. Enumerable.Repeat(NearTheDoor(room), count)]),
            _ => Receptacles(room, serves, count, height),
        };
    }

    private IEnumerable<Placement> Receptacles(int room, ServedPlace serves, int count, Fact height) => serves switch
    {
        ServedPlace.Island => RoomPoints.Spread(_house.Rooms[room], count).Select(p => placing.Inside(room, p, height, assumed: true)),
        ServedPlace.Counter => ReceptacleSpread.AlongCounters(_house, room, count).Select(a => placing.Along(room, a, height, assumed: true)),
        ServedPlace.Basin => AtBasins(room, count, height, over: false),
        ServedPlace.Outdoors => OnOutsideWalls(room, count, height),
        _ => AlongWalls(room, count, height),
    };

    private IEnumerable<Placement> WallLights(int room, ServedPlace serves, int count, Fact height) => serves switch
    {
        ServedPlace.Basin => AtBasins(room, count, height, over: true),
        ServedPlace.Outdoors => ByDoorsOutside(room, count, height),
        _ => AlongWalls(room, count, height),
    };

    private IEnumerable<Placement> AlongWalls(int room, int count, Fact height) =>
        ReceptacleSpread.AlongWalls(_house, room, count).Select(a => placing.Along(room, a, height, assumed: true));

    private IEnumerable<Placement> Ceiling(int room, ImmutableArray<PlanPoint> points) =>
        points.Select(p => placing.Inside(room, p, null, assumed: true));

    // Basin by basin in turn. A receptacle stands beside its basin, on the side where the wall goes on; one light hangs over the middle, several evenly about it.
    private IEnumerable<Placement> AtBasins(int room, int count, Fact height, bool over)
    {
        var framed = _house.Rooms[room];
        var basins = framed.Source.Fixtures.Where(f => f.Kind is FixtureKind.Sink && f.At is not null).Select(f => Canonical(f.At!.Value)).Order().ToList();
        if (basins.Count == 0)
        {
            return over ? AlongWalls(room, count, height) : ReceptacleSpread.AlongWalls(_house, room, count)
                .Select(a => Dry(framed, WallSpaces.SpotAt(framed, a), TubZone.AlongWalls(_house, room))).Select(s => placing.OnWall(room, s.Side, s.Offset, height, assumed: true));
        }

        var beside = ReceptacleRules.BasinReach.Inches().ToSixteenths() / 2;
        return Enumerable.Range(0, count).Select(i =>
        {
            var (basin, number) = (i % basins.Count, i / basins.Count);
            var (side, offset) = WallSpots.Nearest(framed, basins[basin]);
            var length = WallSpots.LengthOf(framed, side);
            var lights = (count - basin + basins.Count - 1) / basins.Count;
            if (!over)
            {
                var usual = (side, Math.Clamp(offset + beside <= length ? offset + beside : offset - beside, 0, length));
                (side, var spot) = Dry(framed, usual, TubZone.Near(_house, room, basins[basin]));
                return placing.OnWall(room, side, spot, height, assumed: true);
            }

            var moved = offset + (2 * number + 1 - lights) * beside;
            return placing.OnWall(room, side, Math.Clamp(moved, 0, length), height, assumed: true);
        });
    }

    // The usual spot, or of the others the nearest one that is farther from a tub or shower: surely outside its zone before where it takes a
    // tape, and that before within it.
    private (int Side, int Offset) Dry(FramedRoom room, (int Side, int Offset) usual, IEnumerable<(int Side, int Offset)> others)
    {
        var zone = Length.FromInches(LocalRules.Figure(_house.Job.Code, "tub-zone", PlacingLimits.TubReach.Number())).ToSixteenths();
        int Wet(PlanPoint spot) => TubZone.Within(_house, room.Index, spot, zone) switch { false => 0, null => 1, true => 2 };
        var at = WallSpots.PointAt(room, usual.Side, usual.Offset);
        if (Wet(at) == 0)
        {
            return usual;
        }

        return others.Select(s => (Spot: s, Point: WallSpots.PointAt(room, s.Side, s.Offset)))
            .Prepend((Spot: usual, Point: at)).OrderBy(s => Wet(s.Point)).ThenBy(s => s.Point.StraightDistanceTo(at)).First().Spot;
    }

    private IEnumerable<Placement> OnOutsideWalls(int room, int count, Fact height)
    {
        var spots = FrontAndBack.Spots(_house, room, count).ToList();
        return spots.Select(s => placing.OnWall(room, s.Side, s.Offset, height, assumed: true)).Concat(AlongWalls(room, count - spots.Count, height));
    }

    private IEnumerable<Placement> ByDoorsOutside(int room, int count, Fact height)
    {
        var doors = OutsideDoors.Of(_house, room).Take(count).ToList();
        foreach (var door in doors)
        {
            var (side, offset) = DoorSpots.Beside(_house, door);
            yield return placing.OnWall(room, side, offset, height, assumed: true);
        }

        foreach (var place in AlongWalls(room, count - doors.Count, height))
        {
            yield return place;
        }
    }

    // Single switches stand at the door that people enter by; three-ways at that door and at the one farthest from it; four-ways between.
    private IEnumerable<Placement> Switches(int room, DeviceKind kind, int count, Fact height)
    {
        var doors = DoorSpots.Doors(_house, room);
        if (doors.IsEmpty)
        {
            foreach (var spot in Enumerable.Range(0, count).Select(i => FarCorner(room, kind is DeviceKind.ThreeWaySwitch ? i % 2 : kind is DeviceKind.FourWaySwitch ? 2 : 0)))
            {
                yield return placing.OnWall(room, spot.Side, spot.Offset, height, assumed: true);
            }

            yield break;
        }

        var main = DoorSpots.Middle(_house, doors[0]);
        var byDistance = doors.Skip(1).OrderByDescending(d => DoorSpots.Middle(_house, d).SquareDistanceTo(main)).ToList();
        for (var i = 0; i < count; i++)
        {
            var (side, offset) = kind switch
            {
                DeviceKind.ThreeWaySwitch when i % 2 == 1 => byDistance.Count > 0 ? DoorSpots.Beside(_house, byDistance[0]) : AwayFrom(room, main),
                DeviceKind.FourWaySwitch => byDistance.Count > 1 ? DoorSpots.Beside(_house, byDistance[1 + i % (byDistance.Count - 1)]) : FarCorner(room, 2 + i),
                _ => DoorSpots.Beside(_house, doors[0]),
            };
            yield return placing.OnWall(room, side, offset, height, assumed: true);
        }
    }

    private (int Side, int Offset) AwayFrom(int room, PlanPoint point)
    {
        var framed = _house.Rooms[room];
        var far = framed.Corners.OrderByDescending(c => c.SquareDistanceTo(point)).ThenBy(c => c).First();
        var side = framed.Corners.IndexOf(far);
        return (side, Math.Min(PracticeDefaults.SwitchFromJamb.Inches().ToSixteenths(), WallSpots.LengthOf(framed, side)));
    }

    private (int Side, int Offset) FarCorner(int room, int number)
    {
        var framed = _house.Rooms[room];
        var side = number % framed.Corners.Length * (framed.Corners.Length > 3 ? 2 : 1) % framed.Corners.Length;
        return (side, Math.Min(PracticeDefaults.SwitchFromJamb.Inches().ToSixteenths(), WallSpots.LengthOf(framed, side)));
    }

    private PlanPoint NearTheDoor(int room)
    {
        var framed = _house.Rooms[room];
        var middle = RoomPoints.Middle(framed);
        var doors = DoorSpots.Doors(_house, room);
        if (doors.IsEmpty)
        {
            return middle;
        }

        var door = DoorSpots.Middle(_house, doors[0]);
        var between = new PlanPoint((door.X + middle.X) / 2, (door.Y + middle.Y) / 2);
        return Polygons.Holds(framed, between) ? between : middle;
    }

    private PlanPoint Canonical(GridPoint at) => _house.Pose.ToCanonical(new PlanPoint(at.X.ToSixteenths(), at.Y.ToSixteenths()));
}
