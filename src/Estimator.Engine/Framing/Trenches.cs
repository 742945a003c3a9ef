using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Framing;

/// <summary>The ditches between the buildings of a job, one for each two of them: everything that goes from one to the other lies in it.</summary>
/// <remarks>
/// A ditch goes straight between the two walls that are nearest one another, at a corner of at least one. It leaves each building on the
/// lowest level that is not a basement. Source: common practice, no source.
/// </remarks>
internal sealed class Trenches(FramedHouse house)
{
    private readonly Dictionary<(int, int), Trench?> _between = [];

    /// <summary>Whether two rooms are in one building.</summary>
    internal bool Together(int a, int b) => house.Rooms[a].Source.Building == house.Rooms[b].Source.Building;

    /// <summary>The ditch between the buildings of two rooms; null where they are in one, or one of the two has no walls.</summary>
    internal Trench? Between(int roomA, int roomB)
    {
        var (a, b) = (house.BuildingOf(roomA), house.BuildingOf(roomB));
        if (a == b)
        {
            return null;
        }

        var key = a < b ? (a, b) : (b, a);
        if (!_between.TryGetValue(key, out var trench))
        {
            trench = Find(key.Item1, key.Item2);
            _between.Add(key, trench);
        }

        return a < b ? trench : trench?.Turned;
    }

    /// <summary>Length of a ditch, as the user stated it or straight across the plan.</summary>
    internal Fact LengthOf(Trench trench, PageWriter page) => house.Job.Buildings[trench.Building].Trench is { } own
        ? page.Given($"$.buildings[{trench.Building}].trench", "Trench from the house", own)
        : page.Compute(Operation.StraightDistance, "trench-length", "Trench from wall to wall", Unit.Length, trench.From.X, trench.From.Y, trench.To.X, trench.To.Y);

    /// <summary>The ditch with its depth below the floor at each end, which is taken to stand at grade.</summary>
    internal Trench Explained(Trench trench, PageWriter page) => trench.Explained(page.Compute(
        Operation.Difference, "trench-depth", "Depth below grade", Unit.Length, page.Constant("Grade", 0, Unit.Length), BurialRules.Cover(house.Job, house.Job.Buildings[trench.Building]).ReadInches(page)));

    private Trench? Find(int a, int b)
    {
        (long Distance, Spot From, Spot To)? best = null;
        foreach (var roomA in AtGrade(a))
        {
            foreach (var roomB in AtGrade(b))
            {
                foreach (var (from, to) in Pairs(roomA, roomB))
                {
                    var distance = Square(from.Point, to.Point);
                    if (best is not { } held || (distance, from.Point, to.Point).CompareTo((held.Distance, held.From.Point, held.To.Point)) < 0)
                    {
                        best = (distance, from, to);
                    }
                }
            }
        }

        if (best is not { } found)
        {
            return null;
        }

        var depth = BurialRules.Cover(house.Job, house.Job.Buildings[b]).Inches().ToSixteenths();
        var length = house.Job.Buildings[b].Trench?.ToSixteenths() ?? found.From.Point.StraightDistanceTo(found.To.Point);
        return new Trench(PlaceOf(found.From, depth), PlaceOf(found.To, depth), length, b);
    }

    private List<FramedRoom> AtGrade(int building)
    {
        var rooms = house.Rooms.Where(r => house.BuildingOf(r.Index) == building && r.Source.Kind is not (RoomKind.Outdoors or RoomKind.Void)).ToList();
        var levels = rooms.Select(r => house.Levels[r.Level]).Distinct().ToList();
        var grade = levels.Where(l => !l.Source.Basement).DefaultIfEmpty(levels.FirstOrDefault()).MinBy(l => l?.Index ?? 0);
        return [.. rooms.Where(r => r.Level == grade?.Index)];
    }

    private static IEnumerable<(Spot From, Spot To)> Pairs(FramedRoom a, FramedRoom b) =>
        Corners(a).SelectMany(from => Corners(b).Select(to => (from, to)))
            .Concat(Corners(b).SelectMany(to => Facing(a, to.Point).Select(from => (from, to))))
            .Concat(Corners(a).SelectMany(from => Facing(b, from.Point).Select(to => (from, to))));

    private static IEnumerable<Spot> Corners(FramedRoom room) => room.Corners.Select((c, i) => new Spot(room, i, 0, c));

    // The spots of a room's sides that a point faces squarely; a slanting side is met at its corners only.
    private static IEnumerable<Spot> Facing(FramedRoom room, PlanPoint point)
    {
        for (var side = 0; side < room.Corners.Length; side++)
        {
            var (a, b) = (room.Corners[side], room.Corners[(side + 1) % room.Corners.Length]);
            if (a.X == b.X && point.Y > Math.Min(a.Y, b.Y) && point.Y < Math.Max(a.Y, b.Y))
            {
                yield return new Spot(room, side, Math.Abs(point.Y - a.Y), new PlanPoint(a.X, point.Y));
            }
            else if (a.Y == b.Y && point.X > Math.Min(a.X, b.X) && point.X < Math.Max(a.X, b.X))
            {
                yield return new Spot(room, side, Math.Abs(point.X - a.X), new PlanPoint(point.X, a.Y));
            }
        }
    }

    private Placement PlaceOf(Spot spot, int depth)
    {
        var (x, y) = PlanFacts.At(house, spot.Point, []);
        return new Placement
        {
            Room = spot.Room.Index,
            Level = spot.Room.Level,
            Mount = Mount.Wall,
            Side = spot.Side,
            Offset = spot.Offset,
            Spot = spot.Point,
            Height = -depth,
            X = x,
            Y = y,
            HeightFact = default,
            Assumed = true,
        };
    }

    private static long Square(PlanPoint a, PlanPoint b) => checked((long)(a.X - b.X) * (a.X - b.X) + (long)(a.Y - b.Y) * (a.Y - b.Y));

    private readonly record struct Spot(FramedRoom Room, int Side, int Offset, PlanPoint Point);
}
