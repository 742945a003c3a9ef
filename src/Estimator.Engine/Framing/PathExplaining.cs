using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Framing;

/// <summary>Explains the lengths of a way by the places of its ends, the corners that it turns and the heights that it climbs.</summary>
internal sealed class PathExplaining(FramedHouse house, PageWriter page)
{
    internal RunPath Explain(PathDraft draft)
    {
        var horizontal = Horizontal(draft);
        var (crossed, members) = draft.Way is RunWay.AlongWalls ? (horizontal, Members(horizontal, house.Levels[draft.From.Level].StudSpacing)) : Joists(draft);
        return new RunPath
        {
            Way = draft.Way,
            Turns = draft.Turns,
            Horizontal = horizontal,
            Vertical = Vertical(draft),
            AlongMembers = page.Compute(Operation.Difference, "way-along", "Part of the way along members", Unit.Length, horizontal, crossed),
            Bores = page.Compute(
                Operation.Sum, "way-bores", "Holes to bore", Unit.Each, members, page.Constant("Plates and corner studs", draft.MoreBores, Unit.Each)),
            Bridged = draft.Bridged,
        };
    }

    /// <summary>The level whose joists lie under a level's floor; the lowest floor has its own.</summary>
    internal static int FloorOf(int level) => Math.Max(0, level - 1);

    private Fact Horizontal(PathDraft draft)
    {
        List<Fact> legs = [];
        var spots = draft.Turns.Select(t => t.Spot).ToList();
        for (var i = 1; i < spots.Count; i++)
        {
            if (spots[i] != spots[i - 1])
            {
                legs.Add(Leg(draft, spots[i - 1], spots[i]));
            }
        }

        return page.Sum("way-horizontal", "Horizontal way through the framing", Unit.Length, legs);
    }

    // Each turn is a corner of a room or the place of an end, so both coordinates of each point are figures that the user or the layout gave.
    private Fact Leg(PathDraft draft, PlanPoint a, PlanPoint b)
    {
        var (from, to) = (Coordinates(draft, a), Coordinates(draft, b));
        var operation = draft.Way is RunWay.AlongWalls ? Operation.StraightDistance : Operation.SquareDistance;
        return page.Compute(operation, "way-leg", "From one turn to the next", Unit.Length, from.X, from.Y, to.X, to.Y);
    }

    private (Fact X, Fact Y) Coordinates(PathDraft draft, PlanPoint spot)
    {
        foreach (var end in new[] { draft.From, draft.To })
        {
            if (end.Spot == spot)
            {
                return (end.X, end.Y);
            }
        }

        var corner = house.Rooms.SelectMany(r => r.Corners.Select((c, i) => (Corner: c, Fact: r.CornerFacts[i]))).FirstOrDefault(c => c.Corner == spot);
        return corner.Corner == spot && corner.Fact.X.Unit is Unit.Length
            ? corner.Fact
            : Crossing(draft, spot);
    }

    // A turn where the line of one corner crosses that of another: each coordinate is found among the corners and ends; on a slanting wall, part of the way
    // along it.
    private (Fact X, Fact Y) Crossing(PathDraft draft, PlanPoint spot)
    {
        var grid = house.Pose.ToGrid(spot);
        var known = house.Rooms.SelectMany(r => r.HoleFacts.Add(r.CornerFacts)).SelectMany(ring => ring).Append((draft.From.X, draft.From.Y)).Append((draft.To.X, draft.To.Y)).ToList();
        var (x, y) = (Among(known.Select(f => f.Item1), grid.X), Among(known.Select(f => f.Item2), grid.Y));
        return x is { } knownX && y is { } knownY ? (knownX, knownY) : OnAWall(spot) ?? (x ?? Point(grid.X), y ?? Point(grid.Y));
    }

    private (Fact X, Fact Y)? OnAWall(PlanPoint spot)
    {
        foreach (var room in house.Rooms)
        {
            var (side, offset) = WallSpots.Nearest(room, spot);
            if (WallSpots.PointAt(room, side, offset) == spot)
            {
                var (a, b) = (room.CornerFacts[side], room.CornerFacts[(side + 1) % room.Corners.Length]);
                var (along, whole) = (page.Constant("Sixteenths along the wall", offset), page.Constant("Sixteenths of the wall", WallSpots.LengthOf(room, side)));
                return (
                    page.Compute(Operation.PartWay, "spot-on-wall", "Spot on the wall", Unit.Length, a.X, b.X, along, whole),
                    page.Compute(Operation.PartWay, "spot-on-wall", "Spot on the wall", Unit.Length, a.Y, b.Y, along, whole));
            }
        }

        return null;
    }

    private static Fact? Among(IEnumerable<Fact> facts, int grid)
    {
        var value = Length.FromSixteenths(grid).ToNanometres();
        var known = facts.FirstOrDefault(f => f.Unit is Unit.Length && f.Value == value);
        return known.Unit is Unit.Length ? known : null;
    }

    private Fact Point(int grid) => page.Compute(
        Operation.Product, "way-meets", "Where the way meets the framing", Unit.Length,
        page.Constant("Sixteenths along the grid", grid), page.Constant("Sixteenth of an inch", (int)Length.FromSixteenths(1).ToNanometres(), Unit.Length));

    private Fact Vertical(PathDraft draft) => draft.Way switch
    {
        RunWay.AlongWalls => page.Compute(
            Operation.Apart, "way-level-change", "Difference of box heights", Unit.Length, draft.From.HeightFact, draft.To.HeightFact),
        RunWay.Underfloor => page.Compute(
            Operation.Sum, "way-rises", "Down through the floor and up again", Unit.Length, draft.From.HeightFact, draft.To.HeightFact, Plate(), Plate()),
        _ when draft.From.Level == draft.To.Level => page.Compute(
            Operation.Sum, "way-rises", "Rise and drop from the ceiling", Unit.Length, Drop(draft.From), Drop(draft.To)),
        _ => page.Compute(Operation.Apart, "way-climb", "Height climbed from level to level", Unit.Length, Altitude(draft.To), Altitude(draft.From)),
    };

    private Fact Drop(Placement place)
    {
        if (place.Mount is Mount.Ceiling)
        {
            return page.Constant("No drop at a ceiling box", 0, Unit.Length);
        }

        var room = house.Rooms[place.Room];
        var drop = page.Compute(
            Operation.Difference, "way-drop", "Ceiling less box height", Unit.Length,
            page.Compute(Operation.Sum, "way-ceiling", "Ceiling and plates", Unit.Length, room.CeilingHeight, Plate()), place.HeightFact);
        return drop.Value >= 0 ? drop : page.Compute(Operation.Maximum, "way-drop", "No drop above the ceiling", Unit.Length, drop, page.Constant("Nothing", 0, Unit.Length));
    }

    private Fact Altitude(Placement place)
    {
        var level = house.Levels[place.Level];
        var index = house.Job.Levels.IndexOf(level.Source);
        var floor = page.Given($"$.levels[{index}].elevation", "Floor above the lowest floor", Length.FromSixteenths(level.Elevation));
        return place.Mount is Mount.Ceiling
            ? page.Compute(Operation.Sum, "altitude", "Height of the ceiling box", Unit.Length, floor, house.Rooms[place.Room].CeilingHeight, Plate())
            : page.Compute(Operation.Sum, "altitude", "Height of the box", Unit.Length, floor, place.HeightFact);
    }

    private Fact Plate() => PracticeDefaults.PlateThickness.ReadInches(page);

    private Fact Members(Fact crossed, Fact spacing) => page.Compute(
        Operation.RoundDown, "way-bores", "Whole members", Unit.Each,
        page.Compute(Operation.Quotient, "way-members", "Members crossed", Unit.Each, crossed, spacing), page.Constant("One", 1, Unit.Each));

    // Each level's joists run as that level's framing says; under the floor lie those of the level below.
    private (Fact Crossed, Fact Members) Joists(PathDraft draft)
    {
        var across = new SortedDictionary<int, List<Fact>>();
        for (var i = 1; i < draft.Turns.Length; i++)
        {
            var (from, to) = (draft.Turns[i - 1], draft.Turns[i]);
            var level = draft.Way is RunWay.Underfloor ? FloorOf(from.Level) : Math.Min(from.Level, to.Level);
            var byX = house.Levels[level].JoistsAlongX == house.Pose.SwapAxes;
            var (a, b) = (Coordinates(draft, from.Spot), Coordinates(draft, to.Spot));
            var (near, far) = byX ? (a.X, b.X) : (a.Y, b.Y);
            if (near.Value != far.Value)
            {
                across.TryAdd(level, []);
                across[level].Add(page.Compute(Operation.Apart, "way-across", "Across the joists", Unit.Length, near, far));
            }
        }

        var crossed = across.Select(a => (Level: a.Key, Across: page.Sum("way-across", "Part of the way across the joists", Unit.Length, a.Value))).ToList();
        return (
            page.Sum("way-across", "Part of the way across joists", Unit.Length, [.. crossed.Select(c => c.Across)]),
            page.Sum("way-bores", "Whole members", Unit.Each, [.. crossed.Select(c => Members(c.Across, house.Levels[c.Level].JoistSpacing))]));
    }
}
